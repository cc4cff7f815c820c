/** Answers as JSON. */
@NullMarked
package plumbrow.app.json;

import org.jspecify.annotations.NullMarked;
