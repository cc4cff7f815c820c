/** The sheets of the workbook. Each column is described here and nowhere else. */
@NullMarked
package plumbrow.documents.workbook.sheet;

import org.jspecify.annotations.NullMarked;
