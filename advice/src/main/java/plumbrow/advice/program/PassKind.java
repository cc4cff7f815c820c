package plumbrow.advice.program;

/** What one trip over the field does. */
public enum PassKind {
    SEED("seed"),
    SPRAY("spray"),
    GRANULE("granule"),
    TILLAGE("tillage"),
    SCOUTING("scouting"),
    /** Weeding, rogueing, detasseling, moving pipe: work by hand among the plants. */
    HAND_WORK("hand labor"),
    HARVEST("harvest");

    private final String word;

    PassKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
