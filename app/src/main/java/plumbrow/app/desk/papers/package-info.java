/** What the desk hands out as files. */
@NullMarked
package plumbrow.app.desk.papers;

import org.jspecify.annotations.NullMarked;
