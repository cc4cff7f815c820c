package plumbrow.advice.years;

import java.util.List;

/**
 * What became of a weed, year by draw.
 *
 * @param groups sites of action whose resistance is followed
 * @param seedsM2 seed in the soil in spring [1/m²]; of a weed that is not followed, the seedlings of each year
 * @param loadPct competitive load of its stand [%]
 * @param lossPct yield that its stand alone would cost [%]
 * @param removedPct what the passes took of the load it would have had [%]
 * @param resistant share of the spring's seed with a resistant copy, by group, year and draw
 */
@SuppressWarnings("ArrayRecordComponent") // Primitive arrays on purpose: twenty years of thousands of draws.
record WeedRun(
        String weed,
        boolean followed,
        List<String> groups,
        double[][] seedsM2,
        double[][] loadPct,
        double[][] lossPct,
        double[][] removedPct,
        double[][][] resistant) {

    WeedRun(String weed, boolean followed, List<String> groups, int seasons, int draws) {
        this(
                weed,
                followed,
                List.copyOf(groups),
                new double[seasons][draws],
                new double[seasons][draws],
                new double[seasons][draws],
                new double[seasons][draws],
                new double[groups.size()][seasons][draws]);
    }
}
