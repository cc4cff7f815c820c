/** What an input costs, what must come back, how surely, and what it is worth to know more first. */
@NullMarked
package plumbrow.science.economics;

import org.jspecify.annotations.NullMarked;
