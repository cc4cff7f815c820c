/** What presses on a field: insects, weeds, and where traits may fail. */
@NullMarked
package plumbrow.advice.pests;

import org.jspecify.annotations.NullMarked;
