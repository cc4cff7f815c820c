package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbrow.advice.gates.Standing;

/**
 * Which course is taken, from those that may be advised.
 *
 * @param advisable places of the courses that are clear or conditional, highest mean margin first
 * @param advised place of the course advised; −1 where none may be
 * @param rival place of the best of the others; −1 where there is none
 * @param tied whether the draws can't tell the advised course's mean from that of the best
 */
record Choice(List<Integer> advisable, int advised, int rival, boolean tied) {
    /** Means closer than this many standard errors of their difference are not told apart. */
    private static final double ERRORS = 2;

    /** The highest mean margin; among those the draws can't tell apart from it, the one that costs least. */
    static Choice among(List<CourseModel> courses, List<Standing> standings, double[][] margins, double[] meanMargins) {
        List<Integer> advisable = new ArrayList<>();
        for (int c = 0; c < courses.size(); c++) {
            if (standings.get(c).advisable()) {
                advisable.add(c);
            }
        }
        advisable.sort(Comparator.comparingDouble((Integer c) -> -meanMargins[c]));
        if (advisable.isEmpty()) {
            return new Choice(List.of(), -1, -1, false);
        }
        int best = advisable.get(0);
        int advised = advisable.stream()
                .filter(c -> c == best || alike(margins[best], margins[c], meanMargins[best] - meanMargins[c]))
                .min(Comparator.comparingDouble(c -> courses.get(c).costUsdPerAcre()))
                .orElse(best);
        int rival = advisable.stream().filter(c -> c != advised).findFirst().orElse(-1);
        return new Choice(List.copyOf(advisable), advised, rival, advised != best);
    }

    private static boolean alike(double[] a, double[] b, double meanDifference) {
        double[] difference = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            difference[i] = a[i] - b[i];
        }
        return meanDifference <= ERRORS * FieldWeighing.standardError(difference, meanDifference);
    }
}
