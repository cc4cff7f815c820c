/** The page of the load card. */
@NullMarked
package plumbrow.app.desk.mix;

import org.jspecify.annotations.NullMarked;
