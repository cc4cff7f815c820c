/** A web application with one page and nothing else: the floor under any start. */
@NullMarked
package plumbrow.bench.empty;

import org.jspecify.annotations.NullMarked;
