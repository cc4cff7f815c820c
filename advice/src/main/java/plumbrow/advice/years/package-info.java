/** Where programs lead over several seasons: weed seed, resistance, insects that outgrow traits, and the money of all years. */
@NullMarked
package plumbrow.advice.years;

import org.jspecify.annotations.NullMarked;
