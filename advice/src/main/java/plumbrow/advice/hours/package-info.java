/** The hours fit for spraying: weather hour by hour, the rules of labels, states and good practice, and what a job needs. */
@NullMarked
package plumbrow.advice.hours;

import org.jspecify.annotations.NullMarked;
