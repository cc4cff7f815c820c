/** Values from outside held against this code where they are no single worked example. */
@NullMarked
package plumbrow.science.checks;

import org.jspecify.annotations.NullMarked;
