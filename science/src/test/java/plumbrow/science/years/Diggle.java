package plumbrow.science.years;

import java.util.List;

/** The weed and the field of Diggle, Neve & Smith 2003, Tables 1 and 2: two dominant unlinked genes. */
final class Diggle {
    static final double FREQUENCY = 1e-6;
    private static final double ESTABLISH = .2;
    private static final double CONTROL = .95;
    private static final double CROP = 100 * .09 * 1.3;
    private static final double SEEDS = 30_000 * .04 / (1 + CROP);

    private Diggle() {}

    static WeedBank bank(double areaM2) {
        return new WeedBank(
                List.of(ResistanceGene.dominant(FREQUENCY), ResistanceGene.dominant(FREQUENCY)),
                new WeedLife(.9, .1, .1, 1, 0),
                Inflow.NONE,
                areaM2);
    }

    /** Both herbicides each year, the first alone, or one after the other. */
    static WeedResponse response(String use, int year) {
        boolean first = !use.equals("rotation") || year % 2 == 0;
        boolean second = use.equals("mixture") || (use.equals("rotation") && year % 2 == 1);
        double[][] survive = new double[4][1];
        double[][] seeds = new double[4][1];
        for (int b = 0; b < 4; b++) {
            survive[b][0] =
                    ESTABLISH * (first && (b & 1) == 0 ? 1 - CONTROL : 1) * (second && (b & 2) == 0 ? 1 - CONTROL : 1);
            seeds[b][0] = survive[b][0] * SEEDS;
        }
        return new WeedResponse(survive, seeds, survive, .04 / (1 + CROP));
    }
}
