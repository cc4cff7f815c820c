/** The command line and the way into the desk; thin, without arithmetic of the trade. */
@NullMarked
package plumbrow.app;

import org.jspecify.annotations.NullMarked;
