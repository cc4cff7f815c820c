@NullMarked
package plumbrow.advice.hours;

import org.jspecify.annotations.NullMarked;
