/** Strips on the farm: laid out beforehand, analysed after harvest, held against what the treatment costs. */
@NullMarked
package plumbrow.advice.strips;

import org.jspecify.annotations.NullMarked;
