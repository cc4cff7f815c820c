/** The packet for a season that is handed across the table: the binder as PDF, the same as a spreadsheet. */
@NullMarked
package plumbrow.documents.binder;

import org.jspecify.annotations.NullMarked;
