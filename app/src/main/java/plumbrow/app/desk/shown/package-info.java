/** How values are written on the pages. */
@NullMarked
package plumbrow.app.desk.shown;

import org.jspecify.annotations.NullMarked;
