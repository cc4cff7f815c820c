@NullMarked
package plumbrow.documents.machine.log;

import org.jspecify.annotations.NullMarked;
