@NullMarked
package plumbrow.app.weather;

import org.jspecify.annotations.NullMarked;
