/** The load card: what goes into the tank, in what order, load by load, and through which nozzles. */
@NullMarked
package plumbrow.advice.loadcard;

import org.jspecify.annotations.NullMarked;
