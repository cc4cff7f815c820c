/** The command line: one class for each command, thin. */
@NullMarked
package plumbrow.app.command;

import org.jspecify.annotations.NullMarked;
