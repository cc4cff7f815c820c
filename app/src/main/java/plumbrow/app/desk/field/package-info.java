/** One field: what is known of it and what presses on it. */
@NullMarked
package plumbrow.app.desk.field;

import org.jspecify.annotations.NullMarked;
