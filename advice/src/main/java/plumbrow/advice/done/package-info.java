/** What was done of what was planned. */
@NullMarked
package plumbrow.advice.done;

import org.jspecify.annotations.NullMarked;
