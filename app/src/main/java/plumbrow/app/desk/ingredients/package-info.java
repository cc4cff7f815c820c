/** What is kept of active ingredients. */
@NullMarked
package plumbrow.app.desk.ingredients;

import org.jspecify.annotations.NullMarked;
