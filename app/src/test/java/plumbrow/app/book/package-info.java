/** The book: what goes in comes out, whatever happens on the way. */
@NullMarked
package plumbrow.app.book;

import org.jspecify.annotations.NullMarked;
