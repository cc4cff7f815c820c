package plumbrow.advice.years;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.weighing.ProgramYears;

/**
 * The draws of a look ahead. What a year brings anew (price, yield, weather) takes the draws of the weighing in another order
 * each year, row by row together; this season's stand as they are. What belongs to the field, its weeds and insects is drawn
 * once for each future and keeps its draw through all years. What is some of both (what a spray does, how many insects
 * come, attainable yield) keeps a share of its spread.
 */
final class YearDraws {
    private static final Distribution ANY = new Distribution.Triangular(0, .5, 1);

    private final DrawSource source;
    private final long seed;
    private final List<ProgramYears.Draws> years = new ArrayList<>();
    private final Map<Assumption, List<double[]>> taken = new LinkedHashMap<>();

    YearDraws(DrawSource source, long seed, int seasons) {
        this.source = source;
        this.seed = seed;
        int[] now = new int[source.draws()];
        Arrays.setAll(now, k -> k);
        double[] stays = of("all", Assumption.STAYS);
        double[] yieldStays = of("all", Assumption.YIELD_STAYS);
        years.add(new ProgramYears.Draws(now, stays, yieldStays, true));
        for (int year = 1; year < seasons; year++) {
            int[] row = source.column("order of year " + year, ANY).ranks();
            years.add(new ProgramYears.Draws(row, stays, yieldStays, false));
        }
    }

    int draws() {
        return source.draws();
    }

    int seasons() {
        return years.size();
    }

    /** What a year's draws are. */
    ProgramYears.Draws year(int year) {
        return years.get(year);
    }

    double[] of(String name, Distribution distribution) {
        return source.column(name, distribution).values();
    }

    double[] of(String name, Assumption taken) {
        double[] values = of(name + ": " + taken.label(), taken.distribution());
        List<double[]> known = this.taken.computeIfAbsent(taken, one -> new ArrayList<>());
        if (known.stream().noneMatch(one -> one == values)) {
            known.add(values);
        }
        return taken.power()
                ? Arrays.stream(values).map(power -> Math.pow(10, power)).toArray()
                : values;
    }

    /** All that was taken without a source so far, each with the draws of it; those of a power are of the power. */
    Map<Assumption, List<double[]>> taken() {
        return taken;
    }

    /** Chance for whole seeds in a year, −1 for the start; the same whatever program is looked at. */
    SplittableRandom random(String name, int draw, int year) {
        return new SplittableRandom(
                seed + name.hashCode() * 0x9E3779B97F4A7C15L + draw * 0xBF58476D1CE4E5B9L + year * 0x94D049BB133111EBL);
    }
}
