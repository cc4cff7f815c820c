@NullMarked
package plumbrow.advice.ask;

import org.jspecify.annotations.NullMarked;
