/** All that the book knows of one weed or insect, on one page. */
@NullMarked
package plumbrow.advice.pestpage;

import org.jspecify.annotations.NullMarked;
