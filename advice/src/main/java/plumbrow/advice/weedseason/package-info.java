/** Reads the weed season of a field out of a season: what the engine of {@code science.weedseason} reckons with. */
@NullMarked
package plumbrow.advice.weedseason;

import org.jspecify.annotations.NullMarked;
