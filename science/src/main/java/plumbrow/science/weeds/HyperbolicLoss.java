package plumbrow.science.weeds;

/**
 * Crop yield lost to weeds, as a hyperbola that rises steeply from the first plant and levels off.
 *
 *   one species            YL = I·D / (1 + I·D/A)
 *   emerged T days late    YL = I·D·e^{−cT} / (1 + I·D·e^{−cT}/A)      (= I·D / (e^{cT} + I·D/A))
 *   several species        CL = Σ I_i·D_i·e^{−c_i·T_i},  YL = CL / (1 + CL/A)
 *
 *   YL  yield lost relative to weed-free [%], 0 … A
 *   I   loss per plant as the density goes to 0 [% per plant/m²], more than 0; 0.1 to 150 seen
 *   A   loss at very high density [%], more than 0, at most 100
 *   D   density that competes all season [plants/m²], 0 or more
 *   c   lost competitive strength per day of delay [1/d]
 *   T   days the weed came after the crop, negative before it
 *   CL  competitive load [%]
 *
 * Losses of single species are never added: the sum could pass 100 %. The parameters differ between sites by a factor of
 * several. Inputs are the caller's to check; within the ranges above the result is finite and at most A.
 *
 * Source: Cousens 1985, Ann. Appl. Biol. 107:239 (form from memory); emergence: Cousens et al. 1987 (form from memory);
 * several species: Swinton et al. 1994, Weed Sci. 42:103 (title seen, form from memory).
 */
public final class HyperbolicLoss {
    private HyperbolicLoss() {}

    /** YL [%] of one species. */
    public static double lossPct(double plantsPerM2, double lossPctPerPlant, double highestLossPct) {
        return ofLoad(lossPctPerPlant * plantsPerM2, highestLossPct);
    }

    /** CL [%] of a cohort that came T days after the crop; loads of species and cohorts are added. */
    public static double load(double plantsPerM2, double lossPctPerPlant, double perDay, double daysAfterCrop) {
        return lossPctPerPlant * plantsPerM2 * Math.exp(-perDay * daysAfterCrop);
    }

    /** YL [%] of a competitive load [%]. */
    public static double ofLoad(double loadPct, double highestLossPct) {
        // A·CL/(CL + A), and not the form above: no product of two loads, so that one of any finite size stays finite.
        return highestLossPct * (loadPct / (loadPct + highestLossPct));
    }

    /** YL [%] of several species that came with the crop; both arrays are of one length. */
    public static double mixedLossPct(double[] plantsPerM2, double[] lossPctPerPlant, double highestLossPct) {
        double load = 0;
        for (int i = 0; i < plantsPerM2.length; i++) {
            load += plantsPerM2[i] * lossPctPerPlant[i];
        }
        return ofLoad(load, highestLossPct);
    }

    /** D [plants/m²] at which the loss is YL; +∞ where YL is A or more and no density reaches it. */
    public static double densityForLossPct(double lossPct, double lossPctPerPlant, double highestLossPct) {
        return lossPct >= highestLossPct
                ? Double.POSITIVE_INFINITY
                : lossPct / (lossPctPerPlant * (1 - lossPct / highestLossPct));
    }
}
