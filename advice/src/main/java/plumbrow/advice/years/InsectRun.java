package plumbrow.advice.years;

import java.util.List;

/**
 * What became of an insect that traits select, year by draw.
 *
 * @param groups trait groups whose resistance is followed
 * @param frequency of the resistant copy in spring, by group, year and draw
 * @param holds share of a group's control that is left, by group, year and draw
 * @param preventedPct injury that plants with the trait are spared [%]; 0 in a year without a trait against it
 * @param aimed whether the program of a year carries a trait against it
 */
@SuppressWarnings("ArrayRecordComponent") // Primitive arrays on purpose: twenty years of thousands of draws.
record InsectRun(
        String insect,
        List<String> groups,
        double[][][] frequency,
        double[][][] holds,
        double[][] preventedPct,
        boolean[] aimed) {

    InsectRun(String insect, List<String> groups, int seasons, int draws) {
        this(
                insect,
                List.copyOf(groups),
                new double[groups.size()][seasons][draws],
                new double[groups.size()][seasons][draws],
                new double[seasons][draws],
                new boolean[seasons]);
    }
}
