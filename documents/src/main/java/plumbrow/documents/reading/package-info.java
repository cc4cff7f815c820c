/** The way into the reading of papers: which sort a paper is, and what a safety data sheet or a label says. */
@NullMarked
package plumbrow.documents.reading;

import org.jspecify.annotations.NullMarked;
