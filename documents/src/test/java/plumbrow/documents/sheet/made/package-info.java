/**
 * Makes safety data sheets of invented products, in many house styles, whose truth is known because it was put there; and
 * measures what the reader finds of it. The reader does not know this package.
 */
@NullMarked
package plumbrow.documents.sheet.made;

import org.jspecify.annotations.NullMarked;
