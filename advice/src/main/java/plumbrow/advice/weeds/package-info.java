/** What a person knows of the weeds' season: climate, the crop's days, ratings, and how tillage was run. */
@NullMarked
package plumbrow.advice.weeds;

import org.jspecify.annotations.NullMarked;
