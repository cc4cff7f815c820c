/** How labels write numbers, rates and crops. */
@NullMarked
package plumbrow.documents.label.grammar;

import org.jspecify.annotations.NullMarked;
