/** A field on the ground: acres, distances, the zones that setbacks take from it, the counties it lies in. */
@NullMarked
package plumbrow.advice.land;

import org.jspecify.annotations.NullMarked;
