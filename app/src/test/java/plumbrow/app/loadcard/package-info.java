@NullMarked
package plumbrow.app.loadcard;

import org.jspecify.annotations.NullMarked;
