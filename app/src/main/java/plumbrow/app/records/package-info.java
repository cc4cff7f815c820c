/** Application records as they come in: typed, or from a file of a machine. */
@NullMarked
package plumbrow.app.records;

import org.jspecify.annotations.NullMarked;
