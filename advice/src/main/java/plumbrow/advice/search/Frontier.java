package plumbrow.advice.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Courses of which none is beaten in mean margin and in something else at once. */
final class Frontier {
    private Frontier() {}

    /** @param better higher is better; of equal courses the first stays */
    static List<Found> of(List<Found> courses, ToDoubleFunction<Found> better) {
        List<Found> sorted = new ArrayList<>(courses);
        sorted.sort(Comparator.comparingDouble(Found::meanMarginUsdPerAcre)
                .reversed()
                .thenComparing(Comparator.comparingDouble(better).reversed()));
        List<Found> frontier = new ArrayList<>();
        double reached = Double.NEGATIVE_INFINITY;
        for (Found course : sorted) {
            if (better.applyAsDouble(course) > reached + 1e-9) {
                frontier.add(course);
                reached = better.applyAsDouble(course);
            }
        }
        return frontier;
    }
}
