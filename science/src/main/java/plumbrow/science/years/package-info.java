/** Several seasons ahead: weed seed in the soil, resistance to herbicides, and insects that outgrow traits. */
@NullMarked
package plumbrow.science.years;

import org.jspecify.annotations.NullMarked;
