package plumbrow.advice.lookback;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.science.trials.FisherF;
import plumbrow.science.trials.StudentT;

/**
 * By how much an assumption ran high or low: what came over what was expected, less 1, over fields and seasons.
 *
 *   d = came ÷ expected − 1     mean d over all fields     SE² = MS ÷ n
 *
 * <p>Fields of one season share its weather and its market. So MS is the mean square between seasons where these differ more than
 * chance lets fields differ (one-way analysis of variance, F of a chance below 25 %), else that of all fields; Student's t goes with
 * its degrees of freedom.
 * One season alone can't tell a habit from a year: then there is no error to be told. It is found where the 80 % interval leaves
 * out 0.
 *
 * <p>What is offered as next year's start is drawn towards no change by τ² ÷ (τ² + SE²), τ = 10 % (common practice, no source).
 *
 * @param fields fields counted
 * @param seasons seasons they are of
 * @param mean mean of d, such as −0.09 where 9 % less came than was expected
 * @param standardError of that mean; null where it is of one season
 * @param degreesOfFreedom of the error; 0 likewise
 * @param low lower end of the 80 % interval; null likewise
 * @param high its upper end; null likewise
 */
public record AssumptionBias(
        Crop crop,
        Of of,
        int fields,
        int seasons,
        double mean,
        @Nullable Double standardError,
        int degreesOfFreedom,
        @Nullable Double low,
        @Nullable Double high) {
    private static final double USUAL_HABIT = 0.1;
    private static final double CONFIDENCE = 0.8;

    /** Chance of the F of seasons above which they are pooled with fields: the usual rule of 25 %, from memory (Bancroft 1964). */
    private static final double POOLED_ABOVE = 0.25;

    /** What may run high or low. */
    public enum Of {
        YIELD("yield"),
        PRICE("price"),
        COST("cost");

        private final String word;

        Of(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** What came over what was expected less 1, on one field of a season. */
    public record Case(int season, double over) {}

    /**
     * Over some fields.
     *
     * @param cases at least one
     */
    public static AssumptionBias of(Crop crop, Of of, List<Case> cases) {
        int n = cases.size();
        double mean = cases.stream().mapToDouble(Case::over).average().orElseThrow();
        Map<Integer, List<Case>> bySeason = cases.stream().collect(Collectors.groupingBy(Case::season));
        int seasons = bySeason.size();
        if (seasons < 2) {
            return new AssumptionBias(crop, of, n, seasons, mean, null, 0, null, null);
        }
        double between = 0;
        double within = 0;
        for (List<Case> season : bySeason.values()) {
            double own = season.stream().mapToDouble(Case::over).average().orElseThrow();
            between += season.size() * (own - mean) * (own - mean);
            within += season.stream()
                    .mapToDouble(one -> (one.over() - own) * (one.over() - own))
                    .sum();
        }
        double ofSeasons = between / (seasons - 1);
        double ofFields = n > seasons ? within / (n - seasons) : 0;
        // Where seasons differ no more than fields do, both tell of the same spread and are pooled.
        boolean bySeasons =
                ofFields == 0 || FisherF.above(ofSeasons / ofFields, seasons - 1, n - seasons) < POOLED_ABOVE;
        double square = bySeasons ? ofSeasons : (between + within) / (n - 1);
        int degrees = bySeasons ? seasons - 1 : n - 1;
        double error = Math.sqrt(square / n);
        double reach = StudentT.forConfidence(CONFIDENCE, degrees) * error;
        return new AssumptionBias(crop, of, n, seasons, mean, error, degrees, mean - reach, mean + reach);
    }

    /** Whether it is found: the 80 % interval leaves out no difference. */
    public boolean found() {
        return low != null && high != null && (low > 0 || high < 0);
    }

    /** By what to multiply the assumption as next year's start: drawn towards 1 by how little is known. */
    public double offered() {
        Double error = standardError;
        double shrunk =
                error == null ? 0 : mean * USUAL_HABIT * USUAL_HABIT / (USUAL_HABIT * USUAL_HABIT + error * error);
        return Math.max(0.1, 1 + shrunk);
    }

    /** Whether it can stand in the assumptions of a crop: cost is made of prices and rates instead. */
    public boolean keepable() {
        return of != Of.COST && found();
    }
}
