package plumbrow.science.weatheryears;

/**
 * Days fit for field work, by a topsoil that rain fills and the season dries.
 *
 *   store = min(12 mm, store + rain);  fit where store &lt; 3 mm and rain &lt; 2.5 mm;  then it dries by d
 *   d = 0.3 + 4.7·sin(π·(day − 60)/240) mm, 0.3 before day 60 and after day 300
 *
 * Form and numbers are ours, fitted to one figure: 20 of the 41 days from 10 April to 20 May in central Illinois. What it was not
 * fitted to: their spread between years, and Missouri's chance of 35 days or more in April and May. Ground that drains badly or
 * well, and autumn, are another matter.
 *
 * Source of the figures: Illinois farmdoc FEFO 10-11, 2010; Missouri G362, 2016 and 2025.
 */
public final class FitDays {
    static final double HOLDS_MM = 12;
    static final double FIT_BELOW_MM = 3;
    private static final double RAIN_BELOW_MM = 2.5;
    private static final double LEAST_MM = .3;
    private static final double SUMMER_MM = 4.7;
    private static final int DRIES_FROM = 60;
    private static final int DRIES_FOR = 240;

    private FitDays() {}

    /** Whether each day of a year is fit. */
    public static boolean[] of(WeatherYear year) {
        boolean[] fit = new boolean[year.rainMm().length];
        double store = HOLDS_MM;
        for (int i = 0; i < fit.length; i++) {
            store = Math.min(HOLDS_MM, store + year.rainMm()[i]);
            fit[i] = store < FIT_BELOW_MM && year.rainMm()[i] < RAIN_BELOW_MM;
            store = Math.max(0, store - driesMm(year.first() + i));
        }
        return fit;
    }

    /** What it dries by on a day of the year [mm]. */
    static double driesMm(int day) {
        double way = (double) (day - DRIES_FROM) / DRIES_FOR;
        return way > 0 && way < 1 ? LEAST_MM + SUMMER_MM * Math.sin(Math.PI * way) : LEAST_MM;
    }
}
