package plumbrow.advice.years;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.weighing.Odds;

/** Counts in which year control fails, draw by draw. */
final class Failures {
    private Failures() {}

    /** First year counted from 0 in which a weed is not held; the number of years where it always is. */
    static int[] ofWeed(WeedRun run) {
        double[][] lost = Arrays.stream(run.lossPct())
                .map(year -> Arrays.stream(year).map(loss -> -loss).toArray())
                .toArray(double[][]::new);
        return earlier(first(run.removedPct(), null, Failure.WEED_PCT), first(lost, null, -Failure.LOSS_PCT));
    }

    /** The same of the traits against an insect; years without a trait do not count. */
    static int[] ofTrait(InsectRun run) {
        return first(run.preventedPct(), run.aimed(), Failure.TRAIT_PCT);
    }

    private static int[] first(double[][] pct, boolean @Nullable [] counts, double least) {
        int[] first = new int[pct[0].length];
        Arrays.fill(first, pct.length);
        for (int y = pct.length - 1; y >= 0; y--) {
            for (int k = 0; k < first.length && (counts == null || counts[y]); k++) {
                first[k] = pct[y][k] < least ? y : first[k];
            }
        }
        return first;
    }

    /** The earlier of two, draw by draw. */
    static int[] earlier(int[] one, int[] other) {
        int[] earlier = one.clone();
        for (int k = 0; k < earlier.length; k++) {
            earlier[k] = Math.min(one[k], other[k]);
        }
        return earlier;
    }

    /** What can't fail, as it is not used. */
    static Failure none(String says, int seasons) {
        return new Failure(Collections.nCopies(seasons, 0.0), null, says);
    }

    /** @param what fails, to begin a sentence with */
    static Failure told(String what, int[] first, int seasons, int firstYear) {
        List<Double> chances = new ArrayList<>();
        Integer median = null;
        for (int y = 0; y < seasons; y++) {
            int year = y;
            double chance =
                    (double) Arrays.stream(first).filter(one -> one <= year).count() / first.length;
            chances.add(chance);
            if (median == null && chance >= .5) {
                median = y + 1;
            }
        }
        return new Failure(chances, median, says(what, chances.get(seasons - 1), median, seasons, firstYear));
    }

    private static String says(String what, double chance, @Nullable Integer median, int seasons, int firstYear) {
        String within = seasons == 1 ? "this season" : "within " + seasons + " seasons";
        if (chance == 0) {
            return what + " does not fail " + within + " in any simulated future.";
        }
        if (median == null) {
            return what + " fails " + within + " in " + Odds.words(chance) + ".";
        }
        return what + " fails in " + (firstYear + median - 1) + " or before in half of the simulated futures, " + within
                + " in " + Odds.words(chance) + ".";
    }
}
