package plumbrow.science.chance;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The quantile of a beta distribution on 0 to 1, fast enough for many draws.
 *
 * <p>A table of quantiles at equal steps of chance gives a bracket and a first value; Newton's rule with the exact
 * distribution brings it to {@link #CLOSE}. Outside the table and wherever Newton would leave the bracket, the library's
 * own search answers. Holds no state that changes.
 */
final class BetaQuantile {
    private static final int STEPS = 256;
    private static final double CLOSE = 1e-13;
    private static final int MOST_ROUNDS = 12;

    private final BetaDistribution distribution;
    private final double[] table = new double[STEPS + 1];

    BetaQuantile(BetaDistribution distribution) {
        this.distribution = distribution;
        for (int i = 0; i <= STEPS; i++) {
            table[i] = distribution.inverseCumulativeProbability((double) i / STEPS);
        }
    }

    double at(double chance) {
        int cell = (int) (chance * STEPS);
        if (cell < 1 || cell >= STEPS - 1) {
            return distribution.inverseCumulativeProbability(chance);
        }
        double low = table[cell];
        double high = table[cell + 1];
        double x = low + (high - low) * (chance * STEPS - cell);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double move = (distribution.cumulativeProbability(x) - chance) / distribution.density(x);
            double next = x - move;
            if (!(next >= low && next <= high)) {
                break;
            }
            x = next;
            if (Math.abs(move) <= CLOSE) {
                return x;
            }
            // Newton doubles the right digits: a move this small leaves nothing to find.
            if (move * move <= CLOSE * (high - low)) {
                return x;
            }
        }
        return distribution.inverseCumulativeProbability(chance);
    }
}
