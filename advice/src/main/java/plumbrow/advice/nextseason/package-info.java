/** From one season to the next: what is carried over, what turns, and what has to be asked again. */
@NullMarked
package plumbrow.advice.nextseason;

import org.jspecify.annotations.NullMarked;
