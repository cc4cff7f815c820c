/** Rows of a season changed one by one, by the same columns and with the same faults as a workbook's. */
@NullMarked
package plumbrow.documents.workbook.edit;

import org.jspecify.annotations.NullMarked;
