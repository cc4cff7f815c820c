/** One question about one field: a season made of a few boxes and of typical values, to be weighed like any other. */
@NullMarked
package plumbrow.advice.ask;

import org.jspecify.annotations.NullMarked;
