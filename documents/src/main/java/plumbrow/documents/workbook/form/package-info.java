/** What a sheet, a column and a cell are, and how a row of cells becomes values. */
@NullMarked
package plumbrow.documents.workbook.form;

import org.jspecify.annotations.NullMarked;
