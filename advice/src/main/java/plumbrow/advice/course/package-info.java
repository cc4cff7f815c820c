/** Courses and their passes: the candidate answers for a field. */
@NullMarked
package plumbrow.advice.course;

import org.jspecify.annotations.NullMarked;
