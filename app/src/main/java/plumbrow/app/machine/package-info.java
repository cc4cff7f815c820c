/** Files for machines, as command and desk hand them out. */
@NullMarked
package plumbrow.app.machine;

import org.jspecify.annotations.NullMarked;
