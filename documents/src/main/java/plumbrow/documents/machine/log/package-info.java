/** What machines write back: task data with time logs, and tables of points; read into what was done. */
@NullMarked
package plumbrow.documents.machine.log;

import org.jspecify.annotations.NullMarked;
