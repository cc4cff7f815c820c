package plumbrow.advice.program;

/** What one trip over the field does. */
public enum PassKind {
    SEED("seed"),
    SPRAY("spray"),
    GRANULE("granule"),
    TILLAGE("tillage"),
    SCOUTING("scouting"),
    HARVEST("harvest");

    private final String word;

    PassKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
