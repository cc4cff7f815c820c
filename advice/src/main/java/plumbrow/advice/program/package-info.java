/** Programs and their passes: the candidate answers for a field. */
@NullMarked
package plumbrow.advice.program;

import org.jspecify.annotations.NullMarked;
