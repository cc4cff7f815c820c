@NullMarked
package plumbrow.app.records;

import org.jspecify.annotations.NullMarked;
