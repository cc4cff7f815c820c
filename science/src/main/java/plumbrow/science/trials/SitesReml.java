package plumbrow.science.trials;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Several sites together, with the spread between sites by restricted maximum likelihood instead of by moments.
 *
 *   τ² solves Σw²[(y − μ)² − v] + 1/Σw·Σw² = Σw²·τ², w = 1/(v + τ²), μ = Σwy/Σw, not below 0; by Fisher's steps:
 *   τ² ← τ² + (y'PPy − tr P)/tr PP;  interval of Hartung and Knapp: μ ± t_{k−1}·√(Σw(y − μ)²/((k − 1)Σw))
 *
 *   y  effect, v  its variance, k  sites;  P = W − ww'/Σw
 *
 * Source: restricted likelihood of the normal model; the BCG trials: τ² .3132 in the vignette of R package
 * RoBMA and a published manuscript.
 */
public final class SitesReml {
    private static final int MOST_STEPS = 1000;
    private static final double CLOSE = 1e-12;

    public static final Figure FIGURE = Figure.declare("random-effects-reml", Subject.TRIALS)
            .question("What do trials at several sites say together, by the restricted likelihood?")
            .input(list("effects", "Difference found at each site", "bu/ac", Range.ANY, "4.2,7.8,1.1,9.5,3.0"))
            .input(list("variances", "Variance of each of them", "", Range.POSITIVE, "2.25,4.00,1.44,6.25,1.00"))
            .input(Asked.CONFIDENCE)
            .output("pooled", "Mean difference over sites", "bu/ac")
            .output("standard_error", "Its standard error", "bu/ac")
            .output("tau2", "Variance between sites", "")
            .output("hk_low", "Interval for few sites, lower end", "bu/ac")
            .output("hk_high", "Interval for few sites, upper end", "bu/ac")
            .formula("variance between sites by restricted likelihood; mean and interval as in random-effects")
            .source("Restricted likelihood of the normal model, as in [robma-vignette]", VERIFIED)
            .validity(
                    "Two sites or more, as many variances as effects. Where the sites agree the variance between them is 0.")
            .caution("Beside random-effects: where the two disagree much, the sites are too few to tell.")
            .example(
                    "effects=-.889311334,-1.585388657,-1.348073148,-1.441551190,-.217547322,-.786115586,-1.620898224,.011952334,-.469417649,-1.371344803,-.339358828,.445913401,-.017313948"
                            + " variances=.325584765,.194581121,.415367965,.020010032,.051210172,.006905618,.223017248,.003961579,.056434211,.073024794,.012412214,.532505845,.071404660",
                    "tau2=.3132 pooled=-.7145",
                    "BCG trials, [robma-vignette]: .3132",
                    VERIFIED)
            .example(
                    "effects=3.0,3.4,2.8,3.1 variances=1,1.5,.8,1.2",
                    "tau2=0 pooled=3.0267 standard_error=.5164",
                    "four sites, invented: sites agree",
                    COMPUTED)
            .model(SitesReml::solve);

    private SitesReml() {}

    /** Variance between sites by restricted maximum likelihood, 0 or more; NaN where the steps do not settle. */
    public static double betweenSites(double[] effects, double[] variances) {
        double tau2 = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] weights = Pooled.weights(variances, tau2);
            double mean = Pooled.mean(effects, weights);
            double sum = 0;
            double squares = 0;
            double cubes = 0;
            double fit = 0;
            for (int i = 0; i < effects.length; i++) {
                double w = weights[i];
                sum += w;
                squares += w * w;
                cubes += w * w * w;
                fit += w * w * (effects[i] - mean) * (effects[i] - mean);
            }
            double trace = sum - squares / sum;
            double traceOfSquare = squares - 2 * cubes / sum + squares * squares / (sum * sum);
            double next = Math.max(0, tau2 + (fit - trace) / traceOfSquare);
            if (Math.abs(next - tau2) <= CLOSE * (1 + next)) {
                return next;
            }
            tau2 = next;
        }
        return Double.NaN;
    }

    private static Outputs solve(Given given, Working working) {
        double[] effects = given.list("effects");
        double[] variances = given.list("variances");
        if (effects.length < 2) {
            throw given.refuse("effects", "two sites or more");
        }
        if (variances.length != effects.length) {
            throw given.refuse("variances", "as many numbers as effects has (" + effects.length + ")");
        }
        double tau2 = betweenSites(effects, variances);
        if (Double.isNaN(tau2)) {
            throw given.refuse("variances", "variances less far apart: the likelihood does not settle for these");
        }
        working.line("variance between sites", tau2, "", "likeliest, of {} sites", effects.length);
        double[] weights = Pooled.weights(variances, tau2);
        double mean = Pooled.mean(effects, weights);
        double total = 0;
        for (double weight : weights) {
            total += weight;
        }
        working.line("mean difference", mean, "bu/ac", "mean weighted by 1 ÷ (variance + {})", tau2);
        double error = working.line("its standard error", 1 / Math.sqrt(total), "", "1 ÷ √({})", total);
        double squares = Pooled.squares(effects, weights, mean);
        int df = effects.length - 1;
        double few = working.line(
                "standard error for few sites",
                Math.sqrt(squares / (df * total)),
                "",
                "√({} ÷ ({} × {}))",
                squares,
                df,
                total);
        double confidence = given.number("confidence");
        double t =
                working.line("t", StudentT.forConfidence(confidence, df), "", "T⁻¹({}; {})", (1 + confidence) / 2, df);
        return new Outputs()
                .put("pooled", mean)
                .put("standard_error", error)
                .put("tau2", tau2)
                .put("hk_low", working.line("lower end", mean - t * few, "", "{} − {} × {}", mean, t, few))
                .put("hk_high", working.line("upper end", mean + t * few, "", "{} + {} × {}", mean, t, few));
    }
}
