/** What Plumbrow's weighing costs in time, and how that compares. Never shipped. */
@NullMarked
package plumbrow.bench;

import org.jspecify.annotations.NullMarked;
