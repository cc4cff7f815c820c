/** From one season to the next on the desk: what comes along, and prices that nobody has asked for again. */
@NullMarked
package plumbrow.app.desk.nextseason;

import org.jspecify.annotations.NullMarked;
