/** The invented advisory book that comes with Plumbrow, to look around in. */
@NullMarked
package plumbrow.app.demo;

import org.jspecify.annotations.NullMarked;
