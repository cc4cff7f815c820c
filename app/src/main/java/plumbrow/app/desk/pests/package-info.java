/** A page for each weed and insect. */
@NullMarked
package plumbrow.app.desk.pests;

import org.jspecify.annotations.NullMarked;
