package plumbrow.advice.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Programs of which none is beaten in mean margin and in something else at once. */
final class Frontier {
    private Frontier() {}

    /** @param better higher is better; of equal programs the first stays */
    static List<Found> of(List<Found> programs, ToDoubleFunction<Found> better) {
        List<Found> sorted = new ArrayList<>(programs);
        sorted.sort(Comparator.comparingDouble(Found::meanMarginUsdPerAcre)
                .reversed()
                .thenComparing(Comparator.comparingDouble(better).reversed()));
        List<Found> frontier = new ArrayList<>();
        double reached = Double.NEGATIVE_INFINITY;
        for (Found program : sorted) {
            if (better.applyAsDouble(program) > reached + 1e-9) {
                frontier.add(program);
                reached = better.applyAsDouble(program);
            }
        }
        return frontier;
    }
}
