package plumbrow.science.weatheryears;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Seasons of a place, each as likely as the next, from the one with the driest spring to the one with the wettest. */
public final class SeasonSet {
    /** Seasons that are made where none are on file. */
    public static final int MADE = 41;

    private static final long SEED = 1981;
    private static final int JULY = 6;

    private static volatile WeatherChances common = WeatherChances.of(1, SEED);

    private SeasonSet() {}

    /**
     * Seasons made from normals. Season k has the same luck at every place: only normals and spread differ.
     *
     * @param state and {@code meansFromYears} as in {@link WeatherGenerator#of}
     */
    public static List<WeatherYear> made(SiteNormals normals, String state, int meansFromYears) {
        return WeatherGenerator.of(normals, state, meansFromYears).held(common());
    }

    /** The luck of all places, in the order of the springs at one of them. */
    private static WeatherChances common() {
        WeatherChances chances = common;
        if (chances.seasons() != MADE) {
            WeatherChances any = WeatherChances.of(MADE, SEED);
            List<WeatherYear> years =
                    WeatherGenerator.of(Champaign.normals(), "IL", 30).held(any);
            chances = any.ordered(order(
                    years, years.stream().mapToDouble(WeatherYear::springRainMm).toArray()));
            common = chances;
        }
        return chances;
    }

    /**
     * Years in the order of a measure of how wet the spring was; of the few about the middle the one that is most usual in warmth
     * of spring and in July as well stands in the middle, so that one season can be shown for all.
     */
    public static int[] order(List<WeatherYear> years, double[] wetness) {
        int[] order = WeatherChances.order(wetness);
        double middle = (years.size() - 1) / 2.0;
        double[] spring = WeatherChances.ranks(
                years.stream().mapToDouble(WeatherYear::springC).toArray());
        double[] july = WeatherChances.ranks(summer(years, JULY));
        int at = years.size() / 2;
        int best = at;
        double least = Double.POSITIVE_INFINITY;
        int about = years.size() / 12;
        for (int place = at - about; place <= at + about; place++) {
            double off = Math.abs(spring[order[place]] - middle) + Math.abs(july[order[place]] - middle);
            if (off < least) {
                least = off;
                best = place;
            }
        }
        int usual = order[best];
        order[best] = order[at];
        order[at] = usual;
        return order;
    }

    /**
     * How much the crop of each year had of a month that decides its yield: rain less warmth, each against the other years in
     * standard deviations. Only the order counts.
     *
     * @param month 0 for January
     */
    public static double[] summer(List<WeatherYear> years, int month) {
        double[] rain = scored(
                years.stream().mapToDouble(year -> year.monthRainMm(month)).toArray());
        double[] warm =
                scored(years.stream().mapToDouble(year -> year.monthC(month)).toArray());
        double[] score = new double[rain.length];
        Arrays.setAll(score, i -> rain[i] - warm[i]);
        return score;
    }

    private static double[] scored(double[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        double sd = Math.sqrt(Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .average()
                .orElse(0));
        return Arrays.stream(values)
                .map(value -> sd == 0 ? 0 : (value - mean) / sd)
                .toArray();
    }

    /** Years in an order. */
    public static <T> List<T> ordered(List<T> years, int[] order) {
        List<T> all = new ArrayList<>();
        for (int place : order) {
            all.add(years.get(place));
        }
        return all;
    }
}
