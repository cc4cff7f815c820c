/** Where unforeseen faults and what libraries have to say are kept, so that nobody has to read them on the screen. */
@NullMarked
package plumbrow.app.faults;

import org.jspecify.annotations.NullMarked;
