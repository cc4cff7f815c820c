/** Prices of an earlier season, and whether somebody has asked for them again. */
@NullMarked
package plumbrow.advice.prices;

import org.jspecify.annotations.NullMarked;
