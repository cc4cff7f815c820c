/** What must hold between the rows and sheets of one workbook. */
@NullMarked
package plumbrow.documents.workbook.rule;

import org.jspecify.annotations.NullMarked;
