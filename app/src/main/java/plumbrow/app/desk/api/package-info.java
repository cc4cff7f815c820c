/** The same answers as JSON, for programs. */
@NullMarked
package plumbrow.app.desk.api;

import org.jspecify.annotations.NullMarked;
