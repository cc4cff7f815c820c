/** Poison, labels and spills: what the classes, conversions and limits of the distribution say, and what they don't say. */
@NullMarked
package plumbrow.science.safety;

import org.jspecify.annotations.NullMarked;
