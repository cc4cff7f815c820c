/** The tables of a season and their rows, as the desk, the command line and programs show and change them. */
@NullMarked
package plumbrow.app.rows;

import org.jspecify.annotations.NullMarked;
