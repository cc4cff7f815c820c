/** Tests of the reference data. */
@NullMarked
package plumbrow.science.reference;

import org.jspecify.annotations.NullMarked;
