package plumbrow.science.figure;

/** How well a value or an expected answer is backed. */
public enum Status {
    /** Seen in the source named. */
    VERIFIED("verified"),
    /** Worked by independent arithmetic: a test of the formula, not evidence that the formula is right. */
    COMPUTED("computed"),
    /** Common practice, no source. */
    PRACTICE("common practice, no source"),
    /** General knowledge, not seen in the source. */
    MEMORY("value from memory");

    private final String words;

    Status(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
