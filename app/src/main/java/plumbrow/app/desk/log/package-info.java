/** The log: what was put on the fields, written down and struck, never changed. */
@NullMarked
package plumbrow.app.desk.log;

import org.jspecify.annotations.NullMarked;
