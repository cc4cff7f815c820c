package plumbrow.science.safety;

import java.util.Locale;
import java.util.Optional;

/**
 * Classes of acute poison on a safety sheet.
 *
 * Limits are the upper limits of categories 1 to 4, each included, of a half-lethal dose or an estimate of it; category 5,
 * for mouth and skin only, is the UN's and stands on no US or EU sheet.
 *
 * Source: UN GHS Table 3.1.1 = CLP Annex I Table 3.1.1 (reachonline.eu); point estimates of a category: UN GHS Table 3.1.2
 * (from memory).
 */
enum AcuteClass {
    ORAL("oral", "mg/kg", 0, new double[] {5, 50, 300, 2000, 5000}, new double[] {.5, 5, 100, 500, 2500}),
    DERMAL("dermal", "mg/kg", 10, new double[] {50, 200, 1000, 2000, 5000}, new double[] {5, 50, 300, 1100, 2500}),
    GAS("gas", "ppm", 30, new double[] {100, 500, 2500, 20_000}, new double[] {10, 100, 700, 4500}),
    VAPOUR("vapour", "mg/L", 30, new double[] {.5, 2, 10, 20}, new double[] {.05, .5, 3, 11}),
    DUST_MIST("dust-mist", "mg/L", 30, new double[] {.05, .5, 1, 5}, new double[] {.005, .05, .5, 1.5});

    private static final int FIRST_CODE = 300;
    private final String word;
    private final String unit;
    private final int codeOffset;

    @SuppressWarnings("ImmutableEnumChecker") // never written after construction
    private final double[] limits;

    @SuppressWarnings("ImmutableEnumChecker") // never written after construction
    private final double[] estimates;

    AcuteClass(String word, String unit, int codeOffset, double[] limits, double[] estimates) {
        this.word = word;
        this.unit = unit;
        this.codeOffset = codeOffset;
        this.limits = limits;
        this.estimates = estimates;
    }

    static AcuteClass of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    String word() {
        return word;
    }

    String unit() {
        return unit;
    }

    /** Category 1 to 5, or empty above all limits. */
    Optional<Integer> category(double value) {
        for (int i = 0; i < limits.length; i++) {
            if (value <= limits[i]) {
                return Optional.of(i + 1);
            }
        }
        return Optional.empty();
    }

    /** The hazard code: 1 and 2 share one. */
    String hazardCode(int category) {
        return "H" + (FIRST_CODE + codeOffset + Math.max(0, category - 2));
    }

    /** The point estimate of a category, or empty where the route has no such category. */
    Optional<Double> estimate(int category) {
        return category <= estimates.length ? Optional.of(estimates[category - 1]) : Optional.empty();
    }
}
