/**
 * Makes labels of invented products, in many layouts, whose truth is known because it was put there; and measures what the
 * reader finds of it. The reader does not know this package.
 */
@NullMarked
package plumbrow.documents.label.made;

import org.jspecify.annotations.NullMarked;
