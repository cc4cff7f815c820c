/** Application records: the list, one record, the form, and files for an inspector. */
@NullMarked
package plumbrow.app.desk.records;

import org.jspecify.annotations.NullMarked;
