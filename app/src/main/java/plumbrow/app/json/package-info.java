/** The one place where answers become JSON, for the command line and for the web alike. */
@NullMarked
package plumbrow.app.json;

import org.jspecify.annotations.NullMarked;
