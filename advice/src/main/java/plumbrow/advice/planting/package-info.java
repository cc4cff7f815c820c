/** Which seed stands on which acres in the end, replanting among it. */
@NullMarked
package plumbrow.advice.planting;

import org.jspecify.annotations.NullMarked;
