/** Looking back after harvest. */
@NullMarked
package plumbrow.app.lookback;

import org.jspecify.annotations.NullMarked;
