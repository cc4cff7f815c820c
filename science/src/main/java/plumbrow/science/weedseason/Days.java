package plumbrow.science.weedseason;

import java.util.Arrays;
import plumbrow.science.weatheryears.MonthCurve;

/**
 * The weather of a season, day by day: soil and air temperature [°C, daily mean], rain [mm] and the soil surface.
 *
 * Days are counted as days of the year from the first one. What comes after the last day is not known: nothing emerges then.
 */
public final class Days {
    private static final int YEAR = 365;
    private static final int SOIL_LAG_DAYS = 5;

    private final int first;
    private final double[] soilC;
    private final double[] airC;
    private final double[] rainMm;
    private final Surface[] surface;

    private Days(int first, double[] soilC, double[] airC, double[] rainMm, Surface[] surface) {
        this.first = first;
        this.soilC = soilC;
        this.airC = airC;
        this.rainMm = rainMm;
        this.surface = surface;
    }

    /** Days as measured; the surface follows the rain. All of one length, at least one day, no gap. */
    public static Days measured(int firstDayOfYear, double[] soilC, double[] airC, double[] rainMm) {
        int count = soilC.length;
        if (count == 0 || count > YEAR + 1 || airC.length != count || rainMm.length != count) {
            throw new IllegalArgumentException("soil has " + count + " days, air " + airC.length + ", rain "
                    + rainMm.length + "; expected one number each for every day of a year at most");
        }
        for (int i = 0; i < count; i++) {
            if (!(Math.abs(soilC[i]) <= 60 && Math.abs(airC[i]) <= 60 && rainMm[i] >= 0 && rainMm[i] <= 1000)) {
                throw new IllegalArgumentException("day " + (firstDayOfYear + i) + ": soil " + soilC[i] + " °C, air "
                        + airC[i] + " °C, rain " + rainMm[i] + " mm; expected −60 to 60 °C and 0 to 1000 mm");
            }
        }
        double[] rain = rainMm.clone();
        Surface[] surface = new Surface[count];
        Arrays.setAll(surface, i -> Surface.after(rain, i));
        return new Days(firstDayOfYear, soilC.clone(), airC.clone(), rain, surface);
    }

    /**
     * Days from climatic normals: straight lines between the middles of the months, soil as the mean of the air over five
     * days, no rain (it is drawn), and one state of the surface throughout. Common practice, no source.
     *
     * @param airC twelve monthly means
     */
    public static Days ofMonths(double[] airC, int firstDayOfYear, int lastDayOfYear, Surface surface) {
        if (airC.length != 12 || firstDayOfYear < 1 || lastDayOfYear > YEAR || firstDayOfYear > lastDayOfYear) {
            throw new IllegalArgumentException(airC.length + " months, days " + firstDayOfYear + " to " + lastDayOfYear
                    + "; expected twelve months and days within the year");
        }
        int count = lastDayOfYear - firstDayOfYear + 1;
        double[] air = new double[count];
        double[] soil = new double[count];
        for (int i = 0; i < count; i++) {
            air[i] = MonthCurve.at(airC, firstDayOfYear + i);
            for (int back = 0; back < SOIL_LAG_DAYS; back++) {
                soil[i] += MonthCurve.at(airC, firstDayOfYear + i - back) / SOIL_LAG_DAYS;
            }
        }
        Days days = measured(firstDayOfYear, soil, air, new double[count]);
        Arrays.fill(days.surface, surface);
        return days;
    }

    /** The same days with another surface throughout. */
    public Days with(Surface always) {
        Surface[] same = new Surface[count()];
        Arrays.fill(same, always);
        return new Days(first, soilC, airC, rainMm, same);
    }

    /** Number of days. */
    public int count() {
        return soilC.length;
    }

    /** Day of the year of the first day. */
    public int first() {
        return first;
    }

    /** Whether a day of the year is one of these. */
    public boolean has(int dayOfYear) {
        return dayOfYear >= first && dayOfYear < first + count();
    }

    /** Mean air temperature of a day [°C], by its place from the first. */
    public double airC(int index) {
        return airC[index];
    }

    /** Air degree days above a base from the end of one day to the end of another [°C·d], by their places from the first. */
    public double airHeatBetween(int from, int to, double baseC) {
        double sum = 0;
        for (int i = from + 1; i <= to; i++) {
            sum += Math.max(0, airC[i] - baseC);
        }
        return sum;
    }

    /** Mean soil temperature of a day [°C], by its place from the first. */
    public double soilC(int index) {
        return soilC[index];
    }

    double rainMm(int index) {
        return rainMm[index];
    }

    Surface surface(int index) {
        return surface[index];
    }

    /** Soil degree days above a base by the end of each day [°C·d]. */
    double[] soilHeat(double baseC) {
        return heat(soilC, baseC);
    }

    /** Air degree days above a base by the end of each day [°C·d]. */
    double[] airHeat(double baseC) {
        return heat(airC, baseC);
    }

    private static double[] heat(double[] celsius, double baseC) {
        double[] sums = new double[celsius.length];
        double sum = 0;
        for (int i = 0; i < sums.length; i++) {
            sum += Math.max(0, celsius[i] - baseC);
            sums[i] = sum;
        }
        return sums;
    }
}
