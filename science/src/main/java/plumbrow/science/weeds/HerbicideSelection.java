package plumbrow.science.weeds;

/**
 * How herbicides select resistant weeds.
 *
 *   shares    r_new = r/(r + (1 − r)(1 − E));  r' = d·r + (1 − d)·r_new
 *   slow seed N_n = N_0·(1 + f·α/n̄)^n,  α = 1/(1 − E), while N is far below 1
 *   diploid   W = q² + 2q(1−q)(1 − E(1−h)) + (1−q)²(1−E);  q_new = [q² + q(1−q)(1 − E(1−h))]/W;  q' = d·q + (1−d)·q_new
 *   finite    chance that a double resistant is there = 1 − e^{−n}, n the number expected
 *
 *   r  resistant share of the spring seed;  q  frequency of the allele;  E  control of susceptible plants [share], below 1
 *   d  part of next spring's seed that is older than last season;  h  dominance, 0 recessive to 1 dominant
 *   f  fitness without herbicide;  n̄  mean years a seed lives
 *
 * Source: Gressel & Segel 1990, Weed Technol. 4:186 (factors seen, typeset equation damaged in the copy); finite fields:
 * Diggle, Neve & Smith 2003, Weed Res. 43:371.
 */
public final class HerbicideSelection {
    private HerbicideSelection() {}

    /** r' from r, the share of susceptible plants left (1 − E) and d. */
    public static double nextShare(double share, double left, double dormant) {
        return dormant * share + (1 - dormant) * share / (share + (1 - share) * left);
    }

    /** q' from q, 1 − E more than 0. */
    public static double nextFrequency(double frequency, double left, double dominance, double dormant) {
        double q = frequency;
        double control = 1 - left;
        double mixed = 1 - control * (1 - dominance);
        double fitness = q * q + 2 * q * (1 - q) * mixed + (1 - q) * (1 - q) * left;
        return dormant * q + (1 - dormant) * (q * q + q * (1 - q) * mixed) / fitness;
    }

    /** Years, not whole, until a share is reached by the slow-seed model. */
    public static double yearsTo(double share, double start, double selection, double seedLifeYears, double fitness) {
        return Math.log(share / start) / Math.log1p(fitness * selection / seedLifeYears);
    }

    /** Seeds expected to resist two herbicides at once, resistances being independent. */
    public static double expectedDouble(double seeds, double firstShare, double secondShare) {
        return seeds * firstShare * secondShare;
    }

    /** 1 − e^{−n}. */
    public static double chancePresent(double expected) {
        return -Math.expm1(-expected);
    }
}
