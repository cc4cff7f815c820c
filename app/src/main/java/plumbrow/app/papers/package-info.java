/** Papers on their way into the book and out of it: files read, put together by product, made into cards. */
@NullMarked
package plumbrow.app.papers;

import org.jspecify.annotations.NullMarked;
