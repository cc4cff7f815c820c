/** Stands: what was counted, which seed stands on which acres, and what is typical where nobody has entered it. */
@NullMarked
package plumbrow.advice.stand;

import org.jspecify.annotations.NullMarked;
