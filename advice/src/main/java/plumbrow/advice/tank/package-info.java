/** What goes into the tank and through which nozzles: sprayers, how products are mixed, water, and limits of the hour. */
@NullMarked
package plumbrow.advice.tank;

import org.jspecify.annotations.NullMarked;
