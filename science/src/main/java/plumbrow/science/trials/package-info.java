/** Strip trials: what a field can show, how sure it is, and how many strips that takes. */
@NullMarked
package plumbrow.science.trials;

import org.jspecify.annotations.NullMarked;
