/** Readers of the parts of a safety data sheet, one for each subject. */
@NullMarked
package plumbrow.documents.sheet.part;

import org.jspecify.annotations.NullMarked;
