/** Pictures of a decision as SVG text, for the screen and for paper. No script, nothing loaded from elsewhere. */
@NullMarked
package plumbrow.documents.picture;

import org.jspecify.annotations.NullMarked;
