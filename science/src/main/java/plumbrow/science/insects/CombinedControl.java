package plumbrow.science.insects;

/**
 * What several tactics leave of a pest or of its injury.
 *
 *   left = Π(1 − e_j),  control = 1 − left
 *
 * Independence of the tactics is the best case: soil insecticide over rootworm-trait seed rarely added anything in trials,
 * so the second tactic should be given a small e unless resistance is known.
 *
 * e_j is the share removed by tactic j alone [-], 0 to 1.
 * Source: product rule, common practice; field evidence against adding: Tinsley et al. 2014, J. Appl. Entomol.,
 * doi 10.1111/jen.12134; Petzold-Maxwell et al. 2013.
 */
public final class CombinedControl {
    private CombinedControl() {}

    /** The share left by all tactics together. */
    public static double left(double... controls) {
        double left = 1;
        for (double control : controls) {
            left *= 1 - control;
        }
        return left;
    }

    /** The share removed by two tactics together. */
    public static double of(double first, double second) {
        return 1 - (1 - first) * (1 - second);
    }

    /** The share removed by all tactics together. */
    public static double of(double... controls) {
        return 1 - left(controls);
    }
}
