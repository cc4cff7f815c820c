/** Values for tests of the desk. */
@NullMarked
package plumbrow.app;

import org.jspecify.annotations.NullMarked;
