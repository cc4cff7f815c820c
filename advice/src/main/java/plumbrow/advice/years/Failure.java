package plumbrow.advice.years;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * When control fails.
 *
 * <p>Of a weed: the first year in which the passes take less than 80 % of its competition, the share at which a herbicide counts
 * as working, or in which what they leave costs the crop more than 5 % of its yield, the loss that the critical period is drawn
 * for (a convention: Hall et al. 1992, Evans et al. 2003). Of a trait: the first year in which its plants are spared less than half of the injury.
 *
 * @param chanceByYear chance that it has failed in that year or before, for each year
 * @param medianYear year, counted from 1, by which it has failed in half of the draws; null where it has not within the look
 * @param says the same in a sentence
 */
public record Failure(List<Double> chanceByYear, @Nullable Integer medianYear, String says) {
    /** The definition in a sentence. */
    public static final String DEFINED =
            "Control of a weed fails in the first year in which the passes take less than 80 % of its competition, or what they"
                    + " leave costs more than 5 % of the yield; a trait fails in the first year in which its plants are spared"
                    + " less than half of the injury.";

    /** More yield lost to a weed than this is failure [%]. */
    static final double LOSS_PCT = 5;

    /** Less of a weed's load taken than this is failure [%]. */
    static final double WEED_PCT = 80;

    /** Less injury spared to trait plants than this is failure [%]. */
    static final double TRAIT_PCT = 50;

    public Failure {
        chanceByYear = List.copyOf(chanceByYear);
    }

    /** Chance that it has failed within the look. */
    public double chance() {
        return chanceByYear.get(chanceByYear.size() - 1);
    }

    /** Chance that it fails in a year, counted from 1, and not before. */
    public double chanceIn(int year) {
        return chanceByYear.get(year - 1) - (year == 1 ? 0 : chanceByYear.get(year - 2));
    }
}
