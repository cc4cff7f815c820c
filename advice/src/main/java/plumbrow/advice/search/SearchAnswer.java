package plumbrow.advice.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;

/**
 * What the search found for a field.
 *
 * @param best the program of the highest mean margin that may be advised; null where there is none
 * @param runnerUp the next; null where there is none within reach
 * @param whyItLost the lines of the difference between best and runner-up
 * @param afterLookingUp a program that would earn more than the best, if what must be looked up allows it; null if none
 * @param ownBest the best of the season's own programs that may be advised [$/ac]; null where there is none
 * @param ownBestName its name
 * @param near every advisable program within the width, highest mean margin first
 * @param againstRisk of those, the ones that no other beats in both mean margin and worst tenth
 * @param againstResistance of those, the ones that no other beats in both mean margin and survivors of a lone site
 * @param says the answer in one sentence
 * @param limits what the search did not try, and what holds its answer back
 */
public record SearchAnswer(
        Field field,
        int draws,
        long seed,
        @Nullable Found best,
        @Nullable Found runnerUp,
        List<LostBy> whyItLost,
        @Nullable Found afterLookingUp,
        @Nullable Double ownBest,
        @Nullable String ownBestName,
        List<Found> near,
        List<Found> againstRisk,
        List<Found> againstResistance,
        Proof proof,
        String says,
        List<String> limits) {
    public SearchAnswer {
        whyItLost = List.copyOf(whyItLost);
        near = List.copyOf(near);
        againstRisk = List.copyOf(againstRisk);
        againstResistance = List.copyOf(againstResistance);
        limits = List.copyOf(limits);
    }
}
