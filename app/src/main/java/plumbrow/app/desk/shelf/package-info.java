/** The shelf: products by their papers, what was read on them and where it stands, and the product card. */
@NullMarked
package plumbrow.app.desk.shelf;

import org.jspecify.annotations.NullMarked;
