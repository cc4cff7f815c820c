/** The weighing of a field: its courses, its odds, and the boxes that change its outlook. */
@NullMarked
package plumbrow.app.desk.weighing;

import org.jspecify.annotations.NullMarked;
