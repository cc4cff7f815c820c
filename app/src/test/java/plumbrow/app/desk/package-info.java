/** The desk as a person meets it. */
@NullMarked
package plumbrow.app.desk;

import org.jspecify.annotations.NullMarked;
