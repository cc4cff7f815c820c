/** The weighing of a field: its programs, its odds, and the boxes that change its assumptions. */
@NullMarked
package plumbrow.app.desk.weighing;

import org.jspecify.annotations.NullMarked;
