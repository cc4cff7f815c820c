/** Who may come in, and what is said when something goes wrong. */
@NullMarked
package plumbrow.app.desk.door;

import org.jspecify.annotations.NullMarked;
