package plumbrow.documents.label;

/** What someone does who must wear protective equipment. */
public enum Task {
    HANDLERS("applicators and other handlers"),
    MIXERS("mixers and loaders"),
    APPLICATORS("applicators"),
    CLEANERS("cleaners of equipment and spills"),
    EARLY_ENTRY("early entry into treated areas");

    private final String word;

    Task(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
