package plumbrow.science.weedseason;

/**
 * The days of a season in cohorts: every plant that comes up in one cohort is treated as if it had come up on its middle day.
 *
 * One day each is the model itself. With more days each, a species' load, survivors and seed per seedling differ from it by at
 * most Σ over cohorts of (share that emerges in it)·(highest − lowest of that day's value in it), as a day's value depends on
 * the day alone.
 */
final class Cohorts {
    private final int days;
    private final int each;

    /**
     * @param days of the season
     * @param each days in a cohort, the last one may be shorter
     */
    Cohorts(int days, int each) {
        if (each < 1) {
            throw new IllegalArgumentException(each + " days in a cohort; expected 1 or more");
        }
        this.days = days;
        this.each = each;
    }

    int count() {
        return (days + each - 1) / each;
    }

    /** Index of the last day of a cohort. */
    int last(int cohort) {
        return Math.min(days, (cohort + 1) * each) - 1;
    }

    /** Index of the day that stands for a cohort. */
    int middle(int cohort) {
        return (cohort * each + last(cohort)) / 2;
    }

    /** Cohort of a day. */
    int of(int index) {
        return index / each;
    }
}
