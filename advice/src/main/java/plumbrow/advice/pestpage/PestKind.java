package plumbrow.advice.pestpage;

/** What a pest is. */
public enum PestKind {
    WEED("weed"),
    INSECT("insect");

    private final String word;

    PestKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
