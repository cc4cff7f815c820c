/** The workbook: a season as a spreadsheet or as a folder of text files, in and out. */
@NullMarked
package plumbrow.documents.workbook;

import org.jspecify.annotations.NullMarked;
