/** The weed season: what comes up on which day, what each pass does to it, what it costs and what it leaves in the soil. */
@NullMarked
package plumbrow.science.weedseason;

import org.jspecify.annotations.NullMarked;
