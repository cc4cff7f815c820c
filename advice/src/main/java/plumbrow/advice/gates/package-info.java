/** The checks that a program must pass, and what they find. */
@NullMarked
package plumbrow.advice.gates;

import org.jspecify.annotations.NullMarked;
