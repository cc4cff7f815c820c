@NullMarked
package plumbrow.documents.mend;

import org.jspecify.annotations.NullMarked;
