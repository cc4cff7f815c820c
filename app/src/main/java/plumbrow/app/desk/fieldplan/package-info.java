/** The page of a field plan. */
@NullMarked
package plumbrow.app.desk.fieldplan;

import org.jspecify.annotations.NullMarked;
