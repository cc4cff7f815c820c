@NullMarked
package plumbrow.app.fieldplan;

import org.jspecify.annotations.NullMarked;
