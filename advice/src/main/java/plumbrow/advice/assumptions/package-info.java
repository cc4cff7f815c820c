/** What is uncertain, as distributions, and the draws from them. */
@NullMarked
package plumbrow.advice.assumptions;

import org.jspecify.annotations.NullMarked;
