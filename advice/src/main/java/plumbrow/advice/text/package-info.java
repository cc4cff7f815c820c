/** What words may be, wherever they come in. */
@NullMarked
package plumbrow.advice.text;

import org.jspecify.annotations.NullMarked;
