/** Harvest files of strip trials. */
@NullMarked
package plumbrow.documents.strips;

import org.jspecify.annotations.NullMarked;
