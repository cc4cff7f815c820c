/** The season picture of a program on the desk: looking at it, moving its passes, keeping the change. */
@NullMarked
package plumbrow.app.desk.calendar;

import org.jspecify.annotations.NullMarked;
