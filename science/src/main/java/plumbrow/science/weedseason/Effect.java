package plumbrow.science.weedseason;

/**
 * What a pass on one actual day does to one species, cohort by cohort: a share of what it meets is left.
 *
 *   left = untouched + (1 − untouched)/(1 + odds·times)
 */
final class Effect {
    /** Odds of control before doubt. */
    final double[] odds;

    /** Share that the pass can't reach. */
    final double[] untouched;

    /** Share of its full-season cost that a plant killed here has already cost. */
    final double[] paid;

    /** Seedlings that the pass brings up in the cohort, as a share of the season's. */
    final double[] added;

    Effect(double[] odds, double[] untouched, double[] paid, double[] added) {
        this.odds = odds;
        this.untouched = untouched;
        this.paid = paid;
        this.added = added;
    }
}
