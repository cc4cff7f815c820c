/** What an evaluation needs to know: farms, fields, history and all that hangs on them. */
@NullMarked
package plumbrow.advice.season;

import org.jspecify.annotations.NullMarked;
