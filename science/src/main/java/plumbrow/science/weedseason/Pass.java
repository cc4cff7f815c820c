package plumbrow.science.weedseason;

/** One trip over the field, as far as weeds feel it. A tank of two kinds of work is two passes on one day. */
public sealed interface Pass permits Residual, Post, Tillage {
    String name();

    /** Planned day of the year. */
    int day();

    /** Days by which it comes late, rounded to whole days; where it falls after the last day of the season it is not done. */
    Uncertain daysLate();

    /** The same planned for another day of the year. */
    Pass on(int day);
}
