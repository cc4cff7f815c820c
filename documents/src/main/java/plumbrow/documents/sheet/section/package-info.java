/** The order of a safety data sheet: its headings, its sections, and in them labels with what follows them. */
@NullMarked
package plumbrow.documents.sheet.section;

import org.jspecify.annotations.NullMarked;
