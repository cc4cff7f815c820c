/** Turns files into values and values into files. */
@NullMarked
package plumbrow.documents;

import org.jspecify.annotations.NullMarked;
