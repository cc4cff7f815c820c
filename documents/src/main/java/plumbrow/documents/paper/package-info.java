/**
 * Paper as text that knows where it stands: words on pages, in rows of cells, in reading order.
 *
 * What a PDF, a plain text or an HTML page says comes out the same way; what it means is for the packages that ask.
 */
@NullMarked
package plumbrow.documents.paper;

import org.jspecify.annotations.NullMarked;
