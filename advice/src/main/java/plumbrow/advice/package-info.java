/** The decision: a season goes in, weighed and checked programs come out. Knows no database, screen or clock. */
@NullMarked
package plumbrow.advice;

import org.jspecify.annotations.NullMarked;
