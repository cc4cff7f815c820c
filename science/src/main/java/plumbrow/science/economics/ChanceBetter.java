package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The chance that one system beats another at one place, from means, variances and their covariance.
 *
 *   Φ((μ_A − μ_B) / √(σ_A² + σ_B² − 2σ_AB))
 *
 * The difference is taken as normal. With no spread left the answer is 1, 0 or, at equal means, one half.
 *
 * Source: Piepho 1998, table 8, as in R package agridat, hildebrand.systems.
 */
public final class ChanceBetter {
    public static final Figure FIGURE = Figure.declare("chance-better", Subject.ECONOMICS)
            .question("How likely does one system beat another at the next place?")
            .input(number("mean_a", "Mean of a", "", Range.ANY, "1.35"))
            .input(number("mean_b", "Mean of b", "", Range.ANY, "2.70"))
            .input(number("variance_a", "Variance of a between places", "", Range.NOT_NEGATIVE, "0.30"))
            .input(number("variance_b", "Variance of b between places", "", Range.NOT_NEGATIVE, "0.92"))
            .input(number("covariance", "Covariance of a and b", "", Range.ANY, "0.34")
                    .orElse("0"))
            .output("chance", "Chance that a beats b", "")
            .formula("chance = Φ((mean a − mean b) ÷ √(variance a + variance b − 2 × covariance))")
            .source("[piepho-1998]", VERIFIED)
            .validity("Normal differences between places. A covariance larger than the variances allow is refused.")
            .example(
                    "mean_a=1.35 mean_b=2.70 variance_a=.30 variance_b=.92 covariance=.34",
                    "chance=.0331",
                    "on-farm maize, Malawi, 14 farms: [piepho-1998]",
                    VERIFIED)
            .model(ChanceBetter::solve);

    private ChanceBetter() {}

    private static Outputs solve(Given given, Working working) {
        double meanA = given.number("mean_a");
        double meanB = given.number("mean_b");
        double varianceA = given.number("variance_a");
        double varianceB = given.number("variance_b");
        double covariance = given.number("covariance");
        if (Math.abs(covariance) > Math.sqrt(varianceA) * Math.sqrt(varianceB) * (1 + 1e-9)) {
            throw given.refuse(
                    "covariance",
                    "at most " + Numbers.plain(Math.sqrt(varianceA) * Math.sqrt(varianceB))
                            + " either way, from the variances");
        }
        double lead = working.line("difference of the means", meanA - meanB, "", "{} − {}", meanA, meanB);
        double variance = working.line(
                "variance of the difference",
                Math.max(varianceA + varianceB - 2 * covariance, 0),
                "",
                "{} + {} − 2 × {}",
                varianceA,
                varianceB,
                covariance);
        if (variance == 0) {
            return new Outputs().put("chance", lead > 0 ? 1 : lead < 0 ? 0 : 0.5);
        }
        double z = working.line("difference in spreads", lead / Math.sqrt(variance), "", "{} ÷ √{}", lead, variance);
        return new Outputs()
                .put("chance", working.line("chance that a beats b", StandardNormal.below(z), "", "Φ({})", z));
    }
}
