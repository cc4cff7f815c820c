/** The declaration of a figure, from which its command, form, endpoint, docs page and tests come. */
@NullMarked
package plumbrow.science.figure;

import org.jspecify.annotations.NullMarked;
