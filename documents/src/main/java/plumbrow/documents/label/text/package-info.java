/** A label as paragraphs, sentences and tables, each under its headings. */
@NullMarked
package plumbrow.documents.label.text;

import org.jspecify.annotations.NullMarked;
