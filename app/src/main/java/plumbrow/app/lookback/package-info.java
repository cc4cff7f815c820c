/** Harvests as they are typed, and what looking back says, for pages, commands and programs. */
@NullMarked
package plumbrow.app.lookback;

import org.jspecify.annotations.NullMarked;
