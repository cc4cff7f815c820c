/** What a label proposes for the shelf. */
@NullMarked
package plumbrow.documents.label.proposal;

import org.jspecify.annotations.NullMarked;
