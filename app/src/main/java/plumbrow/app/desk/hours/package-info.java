/** The pages of the hours fit for spraying. */
@NullMarked
package plumbrow.app.desk.hours;

import org.jspecify.annotations.NullMarked;
