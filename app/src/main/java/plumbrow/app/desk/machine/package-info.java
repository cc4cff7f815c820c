/** Machine files on the desk. */
@NullMarked
package plumbrow.app.desk.machine;

import org.jspecify.annotations.NullMarked;
