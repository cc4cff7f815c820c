/** Cards made from papers of invented products. */
@NullMarked
package plumbrow.documents.card;

import org.jspecify.annotations.NullMarked;
