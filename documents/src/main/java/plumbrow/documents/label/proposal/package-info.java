/** Rows for the shelf as a label has them, for a person to confirm. */
@NullMarked
package plumbrow.documents.label.proposal;

import org.jspecify.annotations.NullMarked;
