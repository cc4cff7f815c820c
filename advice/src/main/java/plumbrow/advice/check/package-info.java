/** A whole season held against the gates: who is protected, what stands in the way, and what to look up. */
@NullMarked
package plumbrow.advice.check;

import org.jspecify.annotations.NullMarked;
