/** The rate of a pass on every part of a field, as a machine meters it. */
@NullMarked
package plumbrow.advice.ratemap;

import org.jspecify.annotations.NullMarked;
