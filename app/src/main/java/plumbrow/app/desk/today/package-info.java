/** The first page on a phone: what is due, what is fit, what waits. */
@NullMarked
package plumbrow.app.desk.today;

import org.jspecify.annotations.NullMarked;
