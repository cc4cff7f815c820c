package plumbrow.science.weatheryears;

/** Monthly means as values of days: straight lines between the middles of the months. Common practice, no source. */
public final class MonthCurve {
    private static final int[] MID_MONTH = {16, 46, 75, 106, 136, 167, 197, 228, 259, 289, 320, 350};
    private static final int YEAR = 365;
    private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private MonthCurve() {}

    /**
     * The value of a day.
     *
     * @param months twelve values, January first
     * @param dayOfYear of 365, or a few days before 1
     */
    public static double at(double[] months, int dayOfYear) {
        int next = 0;
        while (next < 12 && MID_MONTH[next] <= dayOfYear) {
            next++;
        }
        int before = (next + 11) % 12;
        double from = next == 0 ? MID_MONTH[11] - YEAR : MID_MONTH[before];
        double to = next == 12 ? MID_MONTH[0] + YEAR : MID_MONTH[next];
        double way = (dayOfYear - from) / (to - from);
        return months[before] + way * (months[next % 12] - months[before]);
    }

    /** Days of a month of a common year, 0 for January. */
    public static int days(int month) {
        return DAYS[month];
    }

    /** The month of a day of the year, 0 for January; a day before the year is January's. */
    public static int month(int dayOfYear) {
        int month = 0;
        int last = DAYS[0];
        while (month < 11 && dayOfYear > last) {
            month++;
            last += DAYS[month];
        }
        return month;
    }

    /** First day of the year of a month, 0 for January. */
    static int firstDay(int month) {
        int first = 1;
        for (int m = 0; m < month; m++) {
            first += DAYS[m];
        }
        return first;
    }
}
