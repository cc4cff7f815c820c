@NullMarked
package plumbrow.documents.weather;

import org.jspecify.annotations.NullMarked;
