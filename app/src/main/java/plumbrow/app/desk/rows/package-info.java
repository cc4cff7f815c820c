/** The season entered on screen: every table, every row, every column, from the workbook's own declarations. */
@NullMarked
package plumbrow.app.desk.rows;

import org.jspecify.annotations.NullMarked;
