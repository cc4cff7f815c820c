package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
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
 * How sure a consistency score is: the share of trials in which a product protected, with its sampling error.
 *
 *   Wilson: [p + z²/2n ± z·√(p(1−p)/n + z²/4n²)] / (1 + z²/n)
 *
 * Source: Wilson's interval, as in SciPy.
 */
public final class ConsistencyScore {
    public static final Figure FIGURE = Figure.declare("consistency-score", Subject.INSECTS)
            .question("How sure is the share of trials in which a product protected?")
            .input(number("protected", "Trials in which it protected", "trials", Range.closed(0, 1_000_000), "14"))
            .input(number("trials", "Trials", "trials", Range.closed(1, 1_000_000), "20"))
            .input(number("confidence", "Confidence", "", Range.open(0, 1), "0.95")
                    .orElse("0.95"))
            .output("share_pct", "Share", "%")
            .output("low_pct", "Lower end", "%")
            .output("high_pct", "Upper end", "%")
            .formula("[p + z²/2n ± z √(p(1−p)/n + z²/4n²)] ÷ (1 + z²/n)")
            .source("Interval for a share of [wilson-1927], as in [scipy]", VERIFIED)
            .validity("Independent trials; protected not above trials.")
            .example("protected=14 trials=20", "low_pct=48.1 high_pct=85.5", "independent arithmetic", COMPUTED)
            .example("protected=17 trials=20", "low_pct=64.0 high_pct=94.8", "independent arithmetic", COMPUTED)
            .example("protected=36 trials=60", "low_pct=47.4 high_pct=71.4", "independent arithmetic", COMPUTED)
            .model(ConsistencyScore::solve);

    private ConsistencyScore() {}

    private static Outputs solve(Given given, Working working) {
        double n = given.number("trials");
        double k = given.number("protected");
        if (k > n) {
            throw given.refuse("protected", "a number not above trials (" + Numbers.plain(n) + ")");
        }
        double p = working.line("share", k / n, "", "{} ÷ {}", k, n);
        double z = working.line(
                "z",
                StandardNormal.quantile((1 + given.number("confidence")) / 2),
                "",
                "Φ⁻¹((1 + {}) ÷ 2)",
                given.number("confidence"));
        double divisor = 1 + z * z / n;
        double middle = working.line(
                "middle", (p + z * z / (2 * n)) / divisor, "", "({} + {}² ÷ (2 × {})) ÷ (1 + {}² ÷ {})", p, z, n, z, n);
        double reach = working.line(
                "reach",
                z * Math.sqrt(p * (1 - p) / n + z * z / (4 * n * n)) / divisor,
                "",
                "{} × √({} × (1 − {}) ÷ {} + {}² ÷ (4 × {}²)) ÷ (1 + {}² ÷ {})",
                z,
                p,
                p,
                n,
                z,
                n,
                z,
                n);
        return new Outputs()
                .put("share_pct", 100 * p)
                .put("low_pct", 100 * Math.max(middle - reach, 0))
                .put("high_pct", 100 * Math.min(middle + reach, 1));
    }
}
