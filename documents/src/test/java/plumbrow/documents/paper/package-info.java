@NullMarked
package plumbrow.documents.paper;

import org.jspecify.annotations.NullMarked;
