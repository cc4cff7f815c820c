package plumbrow.science.years;

import java.util.SplittableRandom;

/**
 * Counts where there are few: a field holds whole seeds and whole plants.
 *
 * Fewer than {@link #FEW} expected on the field are drawn by Poisson; more are taken as expected, which is off by less than one
 * part in ten. Without this a seed that resists two herbicides at once is always there, in fractions, and mixtures gain
 * nothing: see {@link plumbrow.science.weeds.TwoHerbicides}.
 *
 * Source: rare counts are Poisson; finite fields: Diggle, Neve & Smith 2003, Weed Res. 43:371. Drawn by Knuth's product.
 */
final class WholeCounts {
    static final double FEW = 100;

    private WholeCounts() {}

    /** The density [1/m²] that is really there, from the one expected and the area [m²]; +∞ is an endless field. */
    static double perM2(double expectedPerM2, double areaM2, SplittableRandom random) {
        double expected = expectedPerM2 * areaM2;
        return expected == 0 || !(expected < FEW) ? expectedPerM2 : poisson(expected, random) / areaM2;
    }

    private static int poisson(double mean, SplittableRandom random) {
        double least = Math.exp(-mean);
        double product = random.nextDouble();
        int count = 0;
        while (product > least) {
            product *= random.nextDouble();
            count++;
        }
        return count;
    }
}
