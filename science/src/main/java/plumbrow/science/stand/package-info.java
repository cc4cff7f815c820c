/** From seeds dropped to plants that live, what a stand brings, the seeding rate that pays and whether replanting does. */
@NullMarked
package plumbrow.science.stand;

import org.jspecify.annotations.NullMarked;
