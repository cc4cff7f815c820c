/** The season of a program as a calendar, and what becomes of it when a pass is moved to another day or another rate. */
@NullMarked
package plumbrow.advice.calendar;

import org.jspecify.annotations.NullMarked;
