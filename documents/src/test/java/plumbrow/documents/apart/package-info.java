@NullMarked
package plumbrow.documents.apart;

import org.jspecify.annotations.NullMarked;
