package plumbrow.science.weatheryears;

import java.util.Arrays;

/**
 * The days of one year, from a day of the year on; 29 February is left out.
 *
 * @param first day of the year of the first one
 * @param highC highest temperature of each day [°C]
 * @param lowC lowest [°C]
 * @param rainMm rain [mm]
 */
@SuppressWarnings("ArrayRecordComponent") // One number a day; read only.
public record WeatherYear(int first, double[] highC, double[] lowC, double[] rainMm) {
    public WeatherYear {
        if (first < 1 || highC.length != lowC.length || lowC.length != rainMm.length || highC.length == 0) {
            throw new IllegalArgumentException("a year from day " + first + " with " + highC.length + ", " + lowC.length
                    + " and " + rainMm.length + " days; expected as many of each, one at least");
        }
    }

    public int last() {
        return first + highC.length - 1;
    }

    /** Rain of the days from one to another day of the year [mm]. */
    public double rainMm(int from, int to) {
        return Arrays.stream(rainMm, place(from), place(to) + 1).sum();
    }

    /** Mean temperature of the days from one to another day of the year, half highest, half lowest [°C]. */
    public double meanC(int from, int to) {
        double sum = 0;
        for (int i = place(from); i <= place(to); i++) {
            sum += (highC[i] + lowC[i]) / 2;
        }
        return sum / (place(to) - place(from) + 1);
    }

    /** Days with 0.25 mm or more. */
    public long wetDays(int from, int to) {
        return Arrays.stream(rainMm, place(from), place(to) + 1)
                .filter(mm -> mm >= .25)
                .count();
    }

    private int place(int day) {
        return Math.min(highC.length - 1, Math.max(0, day - first));
    }

    /** Rain of April to June [mm]: what decides soil herbicides and days in the field. */
    public double springRainMm() {
        return rainMm(MonthCurve.firstDay(3), MonthCurve.firstDay(6) - 1);
    }

    /** Mean temperature of April to June [°C]. */
    public double springC() {
        return meanC(MonthCurve.firstDay(3), MonthCurve.firstDay(6) - 1);
    }

    /** Rain of a month, 0 for January [mm]. */
    public double monthRainMm(int month) {
        return rainMm(MonthCurve.firstDay(month), MonthCurve.firstDay(month) + MonthCurve.days(month) - 1);
    }

    /** Mean temperature of a month, 0 for January [°C]. */
    public double monthC(int month) {
        return meanC(MonthCurve.firstDay(month), MonthCurve.firstDay(month) + MonthCurve.days(month) - 1);
    }

    /** Mean highest temperature of a month, 0 for January [°C]. */
    public double monthHighC(int month) {
        return mean(highC, month);
    }

    /** Mean lowest temperature of a month, 0 for January [°C]. */
    public double monthLowC(int month) {
        return mean(lowC, month);
    }

    /** Wet days of a month, 0 for January. */
    public double monthWetDays(int month) {
        return wetDays(MonthCurve.firstDay(month), MonthCurve.firstDay(month) + MonthCurve.days(month) - 1);
    }

    private double mean(double[] days, int month) {
        int from = place(MonthCurve.firstDay(month));
        return Arrays.stream(days, from, place(MonthCurve.firstDay(month) + MonthCurve.days(month) - 1) + 1)
                .average()
                .orElseThrow();
    }
}
