package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbrow.advice.gates.Standing;

/**
 * Which program is advised, from those that may be.
 *
 * @param advisable places of the programs that are clear or conditional, highest mean margin first
 * @param advised place of the program advised, which leads; −1 where none may be
 * @param rival place of the best of the others; −1 where there is none
 * @param tied whether the draws can't tell the advised program's mean from that of the best
 * @param equals places of the programs about equal to the advised one, it first; it alone where it leads by more than that
 */
record Choice(List<Integer> advisable, int advised, int rival, boolean tied, List<Integer> equals) {
    /** Means closer than this many standard errors of their difference are not told apart. */
    private static final double ERRORS = 2;

    /**
     * The highest mean margin; among those the draws can't tell apart from it, the one that costs least. One that earns less
     * than the baseline on average is not advised, even where the baseline itself may not be used.
     *
     * @param meanCosts of the programs [$/ac]
     */
    static Choice among(
            double[] meanCosts,
            List<Standing> standings,
            double[][] margins,
            double[] meanMargins,
            int baseline,
            EqualRule rule) {
        List<Integer> advisable = new ArrayList<>();
        for (int c = 0; c < meanCosts.length; c++) {
            if (standings.get(c).advisable()) {
                advisable.add(c);
            }
        }
        advisable.sort(Comparator.comparingDouble((Integer c) -> -meanMargins[c]));
        List<Integer> paying = advisable.stream()
                .filter(c -> meanMargins[c] >= meanMargins[baseline])
                .toList();
        if (paying.isEmpty()) {
            return new Choice(List.copyOf(advisable), -1, -1, false, List.of());
        }
        int best = paying.get(0);
        int advised = paying.stream()
                .filter(c -> c == best || alike(margins[best], margins[c], meanMargins[best] - meanMargins[c]))
                .min(Comparator.comparingDouble(c -> meanCosts[c]))
                .orElse(best);
        int rival = advisable.stream().filter(c -> c != advised).findFirst().orElse(-1);
        List<Integer> equals = new ArrayList<>(List.of(advised));
        paying.stream()
                .filter(c -> c != advised
                        && !rule.ahead(
                                meanMargins[advised] - meanMargins[c], rule.leads(margins[advised], margins[c], 1)))
                .forEach(equals::add);
        return new Choice(List.copyOf(advisable), advised, rival, advised != best, List.copyOf(equals));
    }

    private static boolean alike(double[] a, double[] b, double meanDifference) {
        double[] difference = FieldWeighing.difference(a, b);
        return meanDifference <= ERRORS * FieldWeighing.standardError(difference, meanDifference);
    }
}
