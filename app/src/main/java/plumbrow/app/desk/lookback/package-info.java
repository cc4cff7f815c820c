/** Looking back after harvest on the desk. */
@NullMarked
package plumbrow.app.desk.lookback;

import org.jspecify.annotations.NullMarked;
