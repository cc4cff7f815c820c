/** Insect pests of corn, soybean and wheat: loss, thresholds, timing, traits, refuge and resistance. */
@NullMarked
package plumbrow.science.insects;

import org.jspecify.annotations.NullMarked;
