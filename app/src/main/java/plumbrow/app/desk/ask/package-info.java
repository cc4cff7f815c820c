/** The way in: three doors, one question at a time, and a workbook that is dropped on the page. */
@NullMarked
package plumbrow.app.desk.ask;

import org.jspecify.annotations.NullMarked;
