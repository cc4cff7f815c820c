package plumbrow.advice.shelf;

/** The answer to a question that must be asked: an answer nobody has given is unknown, not no. */
public enum Ask {
    YES("yes"),
    NO("no"),
    UNKNOWN("unknown");

    private final String word;

    Ask(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
