/** Lines of the log as people write them: on the desk, in the command line and from programs. */
@NullMarked
package plumbrow.app.log;

import org.jspecify.annotations.NullMarked;
