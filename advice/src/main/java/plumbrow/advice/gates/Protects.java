package plumbrow.advice.gates;

/** Whom or what a gate protects. */
public enum Protects {
    LAW("the law"),
    PEOPLE("people"),
    WATER("water"),
    WILDLIFE("wildlife"),
    NEIGHBOURS("neighbours"),
    NEXT_CROP("the next crop"),
    USEFULNESS("the usefulness of the chemistry");

    private final String words;

    Protects(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
