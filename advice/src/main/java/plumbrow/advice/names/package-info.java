/** Names by which rows of a season refer to one another and to the world, and what is wrong with them. */
@NullMarked
package plumbrow.advice.names;

import org.jspecify.annotations.NullMarked;
