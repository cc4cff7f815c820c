@NullMarked
package plumbrow.documents.confirm;

import org.jspecify.annotations.NullMarked;
