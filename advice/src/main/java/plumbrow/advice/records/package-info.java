/** What was really done: application records, what the law asks of them, and when a field may be entered again. */
@NullMarked
package plumbrow.advice.records;

import org.jspecify.annotations.NullMarked;
