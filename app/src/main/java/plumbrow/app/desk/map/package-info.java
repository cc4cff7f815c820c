/** The map of a field: outline, features, setback zones and county line drawn, and the form that changes them. */
@NullMarked
package plumbrow.app.desk.map;

import org.jspecify.annotations.NullMarked;
