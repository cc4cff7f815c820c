/** The programs worth weighing for a field: every lawful one that the shelf makes, with a proof that none better was left out. */
@NullMarked
package plumbrow.advice.search;

import org.jspecify.annotations.NullMarked;
