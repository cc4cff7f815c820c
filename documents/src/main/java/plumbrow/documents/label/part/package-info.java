/** Readers for one subject of a label each. */
@NullMarked
package plumbrow.documents.label.part;

import org.jspecify.annotations.NullMarked;
