/** What a person puts right on a paper that was read, and the paper with it. */
@NullMarked
package plumbrow.documents.mend;

import org.jspecify.annotations.NullMarked;
