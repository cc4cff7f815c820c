/** The page of the search: the best lawful program of a field, its proof, and what it is weighed against. */
@NullMarked
package plumbrow.app.desk.search;

import org.jspecify.annotations.NullMarked;
