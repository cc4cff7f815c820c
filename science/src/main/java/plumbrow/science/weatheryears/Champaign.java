package plumbrow.science.weatheryears;

/**
 * How the days of one Corn Belt station go: Champaign, Illinois, 1995 to 2023. Other places take their means from their own
 * normals and the day-to-day shape from here.
 *
 * Source: our estimates from the daily rain and hourly temperature packed with Lochocki et al. 2022, in silico Plants diac003:
 * wet from 0.25 mm, gamma by maximum likelihood, temperature as the mean over the month of a curve of two harmonics and the
 * spread about it. Highest and lowest are of hourly means: slightly nearer together than a thermometer's.
 */
final class Champaign {
    private static final double[] AFTER_DRY = {.331, .312, .291, .324, .329, .290, .251, .217, .201, .264, .265, .325};
    private static final double[] AFTER_WET = {.539, .472, .503, .493, .533, .443, .407, .400, .380, .472, .500, .487};
    private static final double[] SHAPE = {.593, .590, .673, .698, .724, .661, .640, .651, .605, .657, .622, .589};
    private static final double[] SCALE_MM = {
        7.90, 9.75, 10.26, 11.07, 12.39, 17.04, 16.51, 15.83, 17.98, 12.68, 11.08, 9.33
    };

    /** Mean of the highest temperature on wet and on dry days [°C], and its spread on them. */
    static final double[] HIGH_WET = {2.4, 4.5, 9.7, 16.1, 21.6, 25.9, 27.9, 27.3, 23.8, 17.3, 10.3, 4.7};

    static final double[] HIGH_DRY = {-.3, 2.6, 9.4, 17.3, 23.7, 27.1, 28.6, 28.2, 25.0, 18.8, 10.1, 2.5};
    static final double[] HIGH_WET_SD = {6.9, 6.9, 6.5, 5.8, 5.0, 4.0, 3.3, 3.3, 4.0, 5.0, 5.9, 6.5};
    static final double[] HIGH_DRY_SD = {6.9, 6.9, 6.5, 5.7, 4.8, 3.9, 3.3, 3.5, 4.2, 5.1, 6.0, 6.6};

    /** The same of the lowest temperature. */
    static final double[] LOW_WET = {-4.7, -3.2, 1.3, 7.4, 13.0, 17.6, 19.7, 18.9, 15.1, 8.9, 2.6, -2.5};

    static final double[] LOW_DRY = {-7.5, -5.8, -1.0, 5.6, 12.3, 16.7, 18.4, 17.1, 13.0, 7.0, .1, -5.3};
    static final double[] LOW_WET_SD = {6.4, 6.2, 5.7, 4.8, 3.8, 2.5, 1.8, 2.2, 3.3, 4.5, 5.5, 6.1};
    static final double[] LOW_DRY_SD = {6.2, 6.1, 5.7, 5.1, 4.2, 3.4, 3.0, 3.1, 3.8, 4.6, 5.4, 6.0};

    private Champaign() {}

    /** Rain of a month, 0 for January. */
    static RainMonth rain(int month) {
        return new RainMonth(AFTER_DRY[month], AFTER_WET[month], SHAPE[month], SCALE_MM[month]);
    }

    /** Normals as its own generator has them. */
    static SiteNormals normals() {
        double[] high = new double[12];
        double[] low = new double[12];
        double[] rain = new double[12];
        double[] days = new double[12];
        for (int m = 0; m < 12; m++) {
            RainMonth month = rain(m);
            double wet = month.wetShare();
            high[m] = wet * HIGH_WET[m] + (1 - wet) * HIGH_DRY[m];
            low[m] = wet * LOW_WET[m] + (1 - wet) * LOW_DRY[m];
            rain[m] = month.meanMm(MonthCurve.days(m));
            days[m] = wet * MonthCurve.days(m);
        }
        return SiteNormals.of(high, low, rain, days);
    }

    /** Half of what a day's highest lies above its lowest on average [°C]. */
    static double halfRangeC(int month) {
        SiteNormals normals = normals();
        return (normals.highC().get(month) - normals.lowC().get(month)) / 2;
    }
}
