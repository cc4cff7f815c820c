package plumbrow.science.weatheryears;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import plumbrow.science.chance.StandardNormal;

/**
 * The luck of a set of seasons, the same at every place: whether a day is wet, how much falls, how warm it is against usual, and
 * how wet and warm whole months are. So a wet June is wet on all fields of a region in the same season.
 *
 * Whole months are stratified over the set: each of N equal shares of chance comes up once, in shuffled order.
 */
final class WeatherChances {
    /** Days before 1 January on which the chain runs in. */
    static final int BEFORE = 30;

    private static final double NEXT_MONTH = .2;
    private static final int DAYS = 365 + BEFORE;

    /** Chance of each day, season by day from {@link #BEFORE} days before the year. */
    final double[][] wet;

    /** Quantile of the day's amount at scale 1. */
    final double[][] amount;

    final double[][] high;
    final double[][] low;

    /** Standard normal scores of whole months, season by month. */
    final double[][] monthRain;

    final double[][] monthWarmth;

    private WeatherChances(int seasons) {
        wet = new double[seasons][DAYS];
        amount = new double[seasons][DAYS];
        high = new double[seasons][DAYS];
        low = new double[seasons][DAYS];
        monthRain = new double[seasons][12];
        monthWarmth = new double[seasons][12];
    }

    int seasons() {
        return wet.length;
    }

    /** The luck of so many seasons, from a seed. */
    static WeatherChances of(int seasons, long seed) {
        WeatherChances chances = new WeatherChances(seasons);
        SplittableRandom random = new SplittableRandom(seed);
        double[] strata = StandardNormal.strata(seasons);
        double[] before = new double[seasons];
        for (int m = 0; m < 12; m++) {
            int[] rain = shuffled(seasons, random);
            int[] warmth = shuffled(seasons, random);
            for (int s = 0; s < seasons; s++) {
                chances.monthRain[s][m] = strata[rain[s]];
                before[s] = m == 0
                        ? strata[warmth[s]]
                        : NEXT_MONTH * before[s] + Math.sqrt(1 - NEXT_MONTH * NEXT_MONTH) * strata[warmth[s]];
                chances.monthWarmth[s][m] = before[s];
            }
        }
        for (int s = 0; s < seasons; s++) {
            for (int i = 0; i < DAYS; i++) {
                double shape = Champaign.rain(MonthCurve.month(i - BEFORE + 1)).shape();
                chances.wet[s][i] = random.nextDouble();
                chances.amount[s][i] = RainMonth.unitAmount(shape, inside(random));
                chances.high[s][i] = StandardNormal.quantile(inside(random));
                chances.low[s][i] = StandardNormal.quantile(inside(random));
            }
        }
        return chances;
    }

    private static double inside(SplittableRandom random) {
        return Math.min(1 - 1e-12, Math.max(1e-12, random.nextDouble()));
    }

    private static int[] shuffled(int count, SplittableRandom random) {
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            int j = random.nextInt(i + 1);
            order[i] = order[j];
            order[j] = i;
        }
        return order;
    }

    /** The same seasons in another order. */
    WeatherChances ordered(int[] order) {
        WeatherChances other = new WeatherChances(order.length);
        for (int s = 0; s < order.length; s++) {
            other.wet[s] = wet[order[s]];
            other.amount[s] = amount[order[s]];
            other.high[s] = high[order[s]];
            other.low[s] = low[order[s]];
            other.monthRain[s] = monthRain[order[s]];
            other.monthWarmth[s] = monthWarmth[order[s]];
        }
        return other;
    }

    /** Places of values from low to high. */
    static int[] order(double[] values) {
        return IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> values[i]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** How many of the values are lower, for each. */
    static double[] ranks(double[] values) {
        int[] order = order(values);
        double[] ranks = new double[values.length];
        for (int rank = 0; rank < order.length; rank++) {
            ranks[order[rank]] = rank;
        }
        return Arrays.copyOf(ranks, ranks.length);
    }
}
