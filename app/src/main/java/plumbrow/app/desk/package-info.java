/** The desk: web pages for one book, on this machine only. Formatting and forms, no arithmetic of the trade. */
@NullMarked
package plumbrow.app.desk;

import org.jspecify.annotations.NullMarked;
