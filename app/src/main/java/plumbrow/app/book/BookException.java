package plumbrow.app.book;

import org.jspecify.annotations.Nullable;

/** The book can't do what was asked. The message is one plain sentence for the person at the desk. */
public class BookException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BookException(String sentence) {
        super(sentence);
    }

    public BookException(String sentence, @Nullable Throwable cause) {
        super(sentence, cause);
    }
}
