package plumbrow.advice.weighing;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.advice.program.ScoutingTrigger;

/**
 * A pass that waits for scouting, on the draws: a decision made later, valued as what it is.
 *
 * @param pass its number
 * @param product what is put out where the count reaches the threshold
 * @param insect what is counted
 * @param threshold count from which on it is made, in {@code unit}
 * @param unit what is counted
 * @param chanceMade share of draws in which it is made [0 to 1]
 * @param bestThreshold the threshold with the highest mean margin on these draws, in {@code unit}; 0 where making it in any case
 *     earns most, null where never making it does
 * @param bestUsdPerAcre mean margin at that threshold above that at the entered one [$/ac], 0 or more
 * @param alwaysUsdPerAcre mean margin of making it in any case above that of the entered threshold, scouting paid in both [$/ac]
 * @param neverUsdPerAcre the same of never making it [$/ac]
 * @param says what to do and how often it comes to that
 * @param saysBest what the best threshold would be, and what it would bring
 */
public record ScoutedPass(
        int pass,
        String product,
        String insect,
        double threshold,
        String unit,
        double chanceMade,
        @Nullable Double bestThreshold,
        double bestUsdPerAcre,
        double alwaysUsdPerAcre,
        double neverUsdPerAcre,
        String says,
        String saysBest) {
    static ScoutedPass of(
            ScoutingTrigger scouting,
            int pass,
            String product,
            Measure measure,
            double chanceMade,
            BestThreshold best) {
        String unit = scouting.unit() == null ? measure.unit() : scouting.unit();
        String typed = Quantities.text(scouting.threshold(), unit);
        return new ScoutedPass(
                pass,
                product,
                scouting.insect(),
                scouting.threshold(),
                unit,
                chanceMade,
                Double.isInfinite(best.threshold()) ? null : best.threshold(),
                best.usdPerAcre(),
                best.alwaysUsdPerAcre(),
                best.neverUsdPerAcre(),
                "scout for " + scouting.insect() + ", " + product + " at " + typed + " or more: made in "
                        + Odds.words(chanceMade) + " simulated seasons",
                best.says(typed, unit));
    }
}
