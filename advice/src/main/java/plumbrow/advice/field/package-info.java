/** Farms, fields and what they carried. */
@NullMarked
package plumbrow.advice.field;

import org.jspecify.annotations.NullMarked;
