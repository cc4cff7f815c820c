/** The models of the field: pure functions with unit, valid range and source. Knows no field, product or file. */
@NullMarked
package plumbrow.science;

import org.jspecify.annotations.NullMarked;
