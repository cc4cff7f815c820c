/** What is due on a day, what is fit, and what waits. */
@NullMarked
package plumbrow.advice.today;

import org.jspecify.annotations.NullMarked;
