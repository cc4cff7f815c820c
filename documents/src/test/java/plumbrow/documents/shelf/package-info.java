/** Papers of invented products put together. */
@NullMarked
package plumbrow.documents.shelf;

import org.jspecify.annotations.NullMarked;
