/** How numbers, units and dates are written on paper, and what they mean. */
@NullMarked
package plumbrow.documents.sheet.grammar;

import org.jspecify.annotations.NullMarked;
