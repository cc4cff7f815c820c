/**
 * Values looked up by others and kept here with unit, conditions, source and status: active ingredients, reportable
 * quantities, weeds, insects, movement, efficacy. The sets are CSV resources beside this package.
 */
@NullMarked
package plumbrow.science.reference;

import org.jspecify.annotations.NullMarked;
