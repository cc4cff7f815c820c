/** What the sprayer, the spreader and the planter put on an acre, what goes into the tank, and how many acres an hour. */
@NullMarked
package plumbrow.science.spraying;

import org.jspecify.annotations.NullMarked;
