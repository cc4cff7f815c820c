/** The trips of a program over its field: what goes out in one tank on one day. */
@NullMarked
package plumbrow.advice.trip;

import org.jspecify.annotations.NullMarked;
