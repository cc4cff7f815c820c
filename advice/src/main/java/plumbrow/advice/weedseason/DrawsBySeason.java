package plumbrow.advice.weedseason;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleToIntFunction;
import java.util.function.IntFunction;
import plumbrow.science.weedseason.SeasonLoss;
import plumbrow.science.weedseason.WeedSeason;
import plumbrow.science.years.SeasonResponse;
import plumbrow.science.years.WeedResponse;

/** Draws sorted by the season that each has: a season is made ready once for all of its draws. */
final class DrawsBySeason {
    /** Draws of each season, in their order; none for the only season of all draws. */
    private final int[][] rows;

    private DrawsBySeason(int[][] rows) {
        this.rows = rows;
    }

    /** All draws have one season. */
    static DrawsBySeason one() {
        return new DrawsBySeason(new int[0][]);
    }

    /** @param season of a drawn value */
    static DrawsBySeason of(double[] drawn, int seasons, DoubleToIntFunction season) {
        int[] of = new int[drawn.length];
        int[] counts = new int[seasons];
        for (int i = 0; i < drawn.length; i++) {
            of[i] = season.applyAsInt(drawn[i]);
            counts[of[i]]++;
        }
        int[][] rows = new int[seasons][];
        for (int s = 0; s < seasons; s++) {
            rows[s] = new int[counts[s]];
        }
        Arrays.fill(counts, 0);
        for (int i = 0; i < drawn.length; i++) {
            rows[of[i]][counts[of[i]]++] = i;
        }
        return new DrawsBySeason(rows);
    }

    /**
     * Loss, load, survivors and seed of all draws.
     *
     * @param engine the engine's season under each weather
     * @param columns of all draws; one that is not read may be empty
     */
    SeasonLoss loss(IntFunction<WeedSeason> engine, double[][] columns, int weeds, int draws) {
        if (rows.length == 0) {
            return SeasonLoss.of(engine.apply(0), columns, draws);
        }
        SeasonLoss all = new SeasonLoss(
                new double[draws], new double[weeds][draws], new double[weeds][draws], new double[weeds][draws]);
        for (int s = 0; s < rows.length; s++) {
            if (rows[s].length > 0) {
                SeasonLoss some = SeasonLoss.of(engine.apply(s), taken(columns, rows[s]), rows[s].length);
                put(some.lossPct(), rows[s], all.lossPct());
                put(some.loadPct(), rows[s], all.loadPct());
                put(some.survivorsM2(), rows[s], all.survivorsM2());
                put(some.seedsM2(), rows[s], all.seedsM2());
            }
        }
        return all;
    }

    /** What becomes of a seedling by biotype, in all draws; the engine's season has the one weed. */
    WeedResponse response(IntFunction<WeedSeason> engine, List<Set<Integer>> biotypes, double[][] columns, int draws) {
        if (rows.length == 0) {
            return SeasonResponse.ofBiotypes(engine.apply(0), 0, biotypes, columns, draws, 1);
        }
        double[][] survive = new double[biotypes.size()][draws];
        double[][] seeds = new double[biotypes.size()][draws];
        double[][] load = new double[biotypes.size()][draws];
        double crowdingM2 = 0;
        for (int s = 0; s < rows.length; s++) {
            if (rows[s].length > 0) {
                WeedResponse some = SeasonResponse.ofBiotypes(
                        engine.apply(s), 0, biotypes, taken(columns, rows[s]), rows[s].length, 1);
                put(some.survive(), rows[s], survive);
                put(some.seeds(), rows[s], seeds);
                put(some.load(), rows[s], load);
                crowdingM2 = some.crowdingM2();
            }
        }
        return new WeedResponse(survive, seeds, load, crowdingM2);
    }

    private static double[][] taken(double[][] columns, int[] rows) {
        double[][] taken = new double[columns.length][];
        for (int c = 0; c < columns.length; c++) {
            taken[c] = columns[c].length == 0 ? columns[c] : new double[rows.length];
            for (int i = 0; i < taken[c].length; i++) {
                taken[c][i] = columns[c][rows[i]];
            }
        }
        return taken;
    }

    private static void put(double[][] some, int[] rows, double[][] all) {
        for (int j = 0; j < all.length; j++) {
            put(some[j], rows, all[j]);
        }
    }

    private static void put(double[] some, int[] rows, double[] all) {
        for (int i = 0; i < rows.length; i++) {
            all[rows[i]] = some[i];
        }
    }
}
