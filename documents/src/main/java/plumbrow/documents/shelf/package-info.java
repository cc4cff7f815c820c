/** Papers by product: which sheet and label belong together, which are missing or old, and what a revision changed. */
@NullMarked
package plumbrow.documents.shelf;

import org.jspecify.annotations.NullMarked;
