/** The check: what stands in the way of each course, and whom it protects. */
@NullMarked
package plumbrow.app.desk.check;

import org.jspecify.annotations.NullMarked;
