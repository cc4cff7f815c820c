/** The season at a glance. */
@NullMarked
package plumbrow.app.desk.season;

import org.jspecify.annotations.NullMarked;
