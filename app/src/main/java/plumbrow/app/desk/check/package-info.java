/** The check: what stands in the way of each program, and whom it protects. */
@NullMarked
package plumbrow.app.desk.check;

import org.jspecify.annotations.NullMarked;
