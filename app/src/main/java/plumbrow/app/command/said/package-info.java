/** How answers are said on a terminal: the answer first, then the table, then what stands behind it. */
@NullMarked
package plumbrow.app.command.said;

import org.jspecify.annotations.NullMarked;
