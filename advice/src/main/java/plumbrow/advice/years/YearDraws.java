package plumbrow.advice.years;

import java.util.Arrays;
import java.util.SplittableRandom;
import plumbrow.advice.outlook.DrawSource;
import plumbrow.advice.outlook.Law;

/**
 * The draws of a look ahead. What a year brings anew (price, yield, pressure, what a spray does) takes the draws of the
 * weighing in another order each year, row by row together; this season's stand as they are. What belongs to the field, its
 * weeds and insects keeps its draw through all years.
 */
final class YearDraws {
    private static final Law ANY = new Law.Triangular(0, .5, 1);

    private final DrawSource source;
    private final long seed;
    private final int[][] rows;

    YearDraws(DrawSource source, long seed, int seasons) {
        this.source = source;
        this.seed = seed;
        this.rows = new int[seasons][];
        rows[0] = new int[source.draws()];
        Arrays.setAll(rows[0], k -> k);
        for (int year = 1; year < seasons; year++) {
            rows[year] = source.column("order of year " + year, ANY).ranks();
        }
    }

    int draws() {
        return source.draws();
    }

    int seasons() {
        return rows.length;
    }

    /** For each draw, the draw whose weather and prices a year takes. */
    int[] rows(int year) {
        return rows[year];
    }

    double[] of(String name, Law law) {
        return source.column(name, law).values();
    }

    double[] of(String name, Assumption taken) {
        double[] values = of(name + ": " + taken.label(), taken.law());
        return taken.power()
                ? Arrays.stream(values).map(power -> Math.pow(10, power)).toArray()
                : values;
    }

    /** Chance for whole seeds in a year, −1 for the start; the same whatever course is looked at. */
    SplittableRandom random(String name, int draw, int year) {
        return new SplittableRandom(
                seed + name.hashCode() * 0x9E3779B97F4A7C15L + draw * 0xBF58476D1CE4E5B9L + year * 0x94D049BB133111EBL);
    }
}
