package plumbrow.advice.assumptions;

/**
 * What an uncertain input is in doubt about. The two are told apart because they answer different questions: the first can be
 * found out before deciding, the second can't, and only the second comes out otherwise from season to season.
 *
 * <p>Many inputs are some of both. Such a one is entered as two inputs, each with its own distribution and kind, where the parts are
 * known; where only the whole is, it takes the kind of the larger part, and the place where it is entered says why.
 */
public enum DoubtKind {
    /** What holds on this field whatever the year: a trait that works here, the seedbank, what a seed or product can do. */
    FIELD("this field"),
    /** What a year brings: price, weather and yield, how many insects come, how late the sprayer is. */
    YEAR("the year");

    private final String word;

    DoubtKind(String word) {
        this.word = word;
    }

    /** "this field" or "the year". */
    public String word() {
        return word;
    }
}
