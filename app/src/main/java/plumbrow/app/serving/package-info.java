/** Puts the desk together and opens it: knows every page, known by none. */
@NullMarked
package plumbrow.app.serving;

import org.jspecify.annotations.NullMarked;
