/** Comparing programs on the same draws, and what is told of it. */
@NullMarked
package plumbrow.advice.weighing;

import org.jspecify.annotations.NullMarked;
