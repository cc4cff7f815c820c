/** Who applies, with which licence and which protection. */
@NullMarked
package plumbrow.advice.crew;

import org.jspecify.annotations.NullMarked;
