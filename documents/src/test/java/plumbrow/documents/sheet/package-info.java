@NullMarked
package plumbrow.documents.sheet;

import org.jspecify.annotations.NullMarked;
