/** Amounts as farmers write them, and what one of them is in another unit. */
@NullMarked
package plumbrow.advice.quantity;

import org.jspecify.annotations.NullMarked;
