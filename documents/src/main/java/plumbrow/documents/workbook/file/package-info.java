/** Spreadsheet files and folders of CSV files as plain grids of cells; no sheet is known here by its meaning. */
@NullMarked
package plumbrow.documents.workbook.file;

import org.jspecify.annotations.NullMarked;
