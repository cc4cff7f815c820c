/** Weeds: what they cost, when they come, what holds them back and what they leave in the soil. */
@NullMarked
package plumbrow.science.weeds;

import org.jspecify.annotations.NullMarked;
