package plumbrow.documents.sheet;

/** What protective equipment protects. */
public enum BodyPart {
    EYES("eyes"),
    HANDS("hands"),
    SKIN("skin"),
    BREATHING("breathing");

    private final String word;

    BodyPart(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
