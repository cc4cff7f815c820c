package plumbrow.science.economics;

/**
 * How good stated chances were, and what that is made of.
 *
 *   Brier score = Σ (p − o)² / N = reliability − resolution + uncertainty
 *   reliability = Σ n_k (p_k − ō_k)² / N      resolution = Σ n_k (ō_k − ō)² / N      uncertainty = ō (1 − ō)
 *
 * over the K different chances that were stated: n_k times, with a share ō_k that came; ō of all.
 *
 * Source: Brier 1950; Murphy 1973, J. Appl. Meteorol. 12:595-600.
 *
 * @param brier mean square of chance less outcome [0 to 1]; lower is better
 * @param reliability how far chances are from what came of them; 0 where what was said to come in 70 of 100 came in 70 of 100
 * @param resolution how far apart what came is between one stated chance and another; higher is better
 * @param uncertainty the score of whoever always says the share that came
 */
public record BrierParts(double brier, double reliability, double resolution, double uncertainty) {
    /**
     * The parts of chances that were stated.
     *
     * @param chances each different chance [0 to 1]
     * @param times how often it was stated, 0 or more
     * @param came how often what it was stated for came, no more than that
     * @throws IllegalArgumentException where nothing was stated
     */
    public static BrierParts of(double[] chances, double[] times, double[] came) {
        double all = 0;
        double happened = 0;
        for (int k = 0; k < chances.length; k++) {
            all += times[k];
            happened += came[k];
        }
        if (all <= 0) {
            throw new IllegalArgumentException("no chance was stated");
        }
        double share = happened / all;
        double brier = 0;
        double reliability = 0;
        double resolution = 0;
        for (int k = 0; k < chances.length; k++) {
            if (times[k] > 0) {
                double of = came[k] / times[k];
                double p = chances[k];
                brier += came[k] * (1 - p) * (1 - p) + (times[k] - came[k]) * p * p;
                reliability += times[k] * (p - of) * (p - of);
                resolution += times[k] * (of - share) * (of - share);
            }
        }
        return new BrierParts(brier / all, reliability / all, resolution / all, share * (1 - share));
    }

    /** The share of the uncertainty that the chances took away; below 0 where always saying the share that came were better. */
    public double skill() {
        return uncertainty == 0 ? 0 : 1 - brier / uncertainty;
    }
}
