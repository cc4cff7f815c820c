/** The checks that a course must pass, and what they find. */
@NullMarked
package plumbrow.advice.gates;

import org.jspecify.annotations.NullMarked;
