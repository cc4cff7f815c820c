/** After harvest: what a choice earned, and how honest the odds and assumptions were. */
@NullMarked
package plumbrow.advice.lookback;

import org.jspecify.annotations.NullMarked;
