/** The book: one file that holds the seasons of a grower or an adviser, and what was chosen in them. */
@NullMarked
package plumbrow.app.book;

import org.jspecify.annotations.NullMarked;
