/** The command line as a person or a script meets it. */
@NullMarked
package plumbrow.app.command;

import org.jspecify.annotations.NullMarked;
