/** Checks against figures from outside this project, each beside its source. */
@NullMarked
package plumbrow.science;

import org.jspecify.annotations.NullMarked;
