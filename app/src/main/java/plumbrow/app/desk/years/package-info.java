/** A field looked at over several seasons. */
@NullMarked
package plumbrow.app.desk.years;

import org.jspecify.annotations.NullMarked;
