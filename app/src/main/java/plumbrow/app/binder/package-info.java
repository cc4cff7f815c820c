/** Binders out of a book: what stands between the commands and the papers, choices and weather that the desk keeps. */
@NullMarked
package plumbrow.app.binder;

import org.jspecify.annotations.NullMarked;
