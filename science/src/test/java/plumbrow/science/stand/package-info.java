@NullMarked
package plumbrow.science.stand;

import org.jspecify.annotations.NullMarked;
