/** The pages of the manual that are written from the declarations. */
@NullMarked
package plumbrow.science.pages;

import org.jspecify.annotations.NullMarked;
