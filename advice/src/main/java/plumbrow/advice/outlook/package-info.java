/** What is uncertain, as distributions, and the draws from them. */
@NullMarked
package plumbrow.advice.outlook;

import org.jspecify.annotations.NullMarked;
