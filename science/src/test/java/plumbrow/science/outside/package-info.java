/** Our statistics beside R's own answers, computed at the moment of the test: run by {@code ./check --with-r}. */
@NullMarked
package plumbrow.science.outside;

import org.jspecify.annotations.NullMarked;
