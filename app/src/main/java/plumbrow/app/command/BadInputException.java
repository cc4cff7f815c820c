package plumbrow.app.command;

/** What was asked can't be done as asked. The message is one sentence for the person who asked. */
final class BadInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BadInputException(String sentence) {
        super(sentence);
    }
}
