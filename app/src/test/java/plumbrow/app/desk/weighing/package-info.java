/** The desk as a person meets it. */
@NullMarked
package plumbrow.app.desk.weighing;

import org.jspecify.annotations.NullMarked;
