package plumbrow.advice.weeds;

/** What a rating rests on. */
public enum Basis {
    LABEL("label"),
    TRIAL("trial"),
    OWN_RATING("own rating");

    private final String word;

    Basis(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
