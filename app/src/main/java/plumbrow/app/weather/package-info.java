/** Weather files on their way into the book, and which trip of which program is meant. */
@NullMarked
package plumbrow.app.weather;

import org.jspecify.annotations.NullMarked;
