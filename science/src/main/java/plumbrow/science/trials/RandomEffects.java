package plumbrow.science.trials;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * One answer from trials at several sites or in several years. The arithmetic is {@link Pooled}.
 *
 *   interval μ ± z·se (DerSimonian and Laird);  μ ± t_{k−1}·√q·se (Hartung and Knapp), q = Σw*(y−μ)²/(k−1)
 *   modified: √max(1, q);  the next field: μ ± t_{k−2}·√(τ² + se²), three sites or more
 *
 * With two to four strips at a site its own variance is nearly noise as a weight: pool the variance within sites first.
 *
 * Source: DerSimonian & Laird 1986 (form from memory); Röver, Knapp & Friede 2015 (PMC4647507); IntHout, Ioannidis & Borm
 * 2014 (PMC4015721).
 */
public final class RandomEffects {
    public static final Figure FIGURE = Figure.declare("random-effects", Subject.TRIALS)
            .question("What do trials at several sites or in several years say together?")
            .input(list("effects", "Difference found at each site", "bu/ac", Range.ANY, "4.2,7.8,1.1,9.5,3.0"))
            .input(list(
                    "variances",
                    "Squared standard error of each difference",
                    "",
                    Range.POSITIVE,
                    "2.25,4.00,1.44,6.25,1.00"))
            .input(Asked.CONFIDENCE)
            .output("pooled", "Mean difference over sites", "bu/ac")
            .output("standard_error", "Its standard error", "bu/ac")
            .output("tau2", "Variance between sites", "")
            .output("q", "Disagreement of the sites", "")
            .output("p_q", "Chance of so much disagreement if sites agreed", "")
            .output("i2_pct", "Share of the spread that is between sites", "%")
            .output("fixed", "Mean difference if sites agreed", "bu/ac")
            .output("low", "Interval, lower end", "bu/ac")
            .output("high", "Interval, upper end", "bu/ac")
            .output("hk_low", "Interval for few sites, lower end", "bu/ac")
            .output("hk_high", "Interval for few sites, upper end", "bu/ac")
            .output("hk_modified_low", "The same, never narrower than the plain one, lower end", "bu/ac")
            .output("hk_modified_high", "The same, never narrower than the plain one, upper end", "bu/ac")
            .sometimes("next_low", "Next field, lower end", "bu/ac")
            .sometimes("next_high", "Next field, upper end", "bu/ac")
            .formula("w = 1 ÷ v; τ² = max(0, (Q − (k−1)) ÷ (Σw − Σw² ÷ Σw)); w* = 1 ÷ (v + τ²); mean = Σw*y ÷ Σw*")
            .source("Hartung-Knapp and its modification: [rover-2015]", VERIFIED)
            .validity(
                    "Two sites or more, independent of one another. The next field is foretold from three sites on. Low and high"
                            + " by the normal distribution, hk by Student's t with k − 1 degrees of freedom.")
            .caution("What a grower wants is the interval of the next field, not that of the mean.")
            .example(
                    "effects=4.2,7.8,1.1,9.5,3.0 variances=2.25,4.00,1.44,6.25,1.00",
                    "fixed=3.57040 q=14.83764 p_q=.00505 tau2=5.841455 i2_pct=73.04 pooled=4.543226 standard_error=1.300343"
                            + " low=1.9946 high=7.0919 hk_low=.4663 hk_high=8.6201 next_low=-4.191 next_high=13.277",
                    "five sites, invented",
                    COMPUTED)
            .example(
                    "effects=3.0,3.4,2.8,3.1 variances=1,1.5,.8,1.2",
                    "q=.16233 tau2=0.0 i2_pct=0.0 pooled=3.026667 standard_error=.516398 low=2.0145 high=4.0388"
                            + " hk_low=2.6444 hk_high=3.4090 hk_modified_low=1.3833 hk_modified_high=4.6701",
                    "four sites, invented: the plain interval for few sites is too narrow",
                    COMPUTED)
            .example(
                    "effects=-25.1883,12.4803,18.6857,14.5253,-9.0987,-1.8787"
                            + " variances=103.7087,390.642,91.2939,53.9433,222.8437,776.9500",
                    "q=13.6106 p_q=.01828 tau2=245.002 i2_pct=63.26 pooled=2.1813 standard_error=8.4894 low=-14.4575"
                            + " high=18.8201 hk_low=-17.1483 hk_high=21.5109 hk_modified_low=-19.641 hk_modified_high=24.004",
                    "set C, corn in six North Carolina counties ([besag-higdon-1999])",
                    COMPUTED)
            .example(
                    "effects=-.889311334,-1.585388657,-1.348073148,-1.441551190,-.217547322,-.786115586,-1.620898224,"
                            + ".011952334,-.469417649,-1.371344803,-.339358828,.445913401,-.017313948"
                            + " variances=.325584765,.194581121,.415367965,.020010032,.051210172,.006905618,.223017248,"
                            + ".003961579,.056434211,.073024794,.012412214,.532505845,.071404660",
                    "tau2=.308760 q=152.2330 i2_pct=92.12 pooled=-.714117 standard_error=.178742 low=-1.064445"
                            + " high=-.363789 hk_low=-1.107821 hk_high=-.320413",
                    "set D, the standard test set of the method (R metadat dat.bcg), by R metafor 3.8",
                    COMPUTED)
            .model(RandomEffects::solve);

    private RandomEffects() {}

    private static Outputs solve(Given given, Working working) {
        double[] effects = given.list("effects");
        double[] variances = given.list("variances");
        int k = effects.length;
        if (variances.length != k) {
            throw given.refuse("variances", "as many numbers as effects has (" + k + ")");
        }
        if (k < 2) {
            throw given.refuse("effects", "the differences of two sites or more");
        }
        double confidence = given.number("confidence");
        double[] ones = Pooled.weights(variances, 0);
        double fixed = working.step(
                "mean if sites agreed", Pooled.meanTerms(effects, ones), Pooled.mean(effects, ones), "bu/ac");
        double q = working.step(
                "disagreement of the sites",
                Pooled.squareTerms(effects, ones, fixed),
                Pooled.squares(effects, ones, fixed),
                "");
        double c = Pooled.scale(ones);
        double tau2 = working.line(
                "variance between sites",
                Pooled.betweenSites(q, k, c),
                "",
                q > k - 1 ? "({} − {}) ÷ {}" : "0, where ({} − {}) ÷ {} is not above 0",
                q,
                k - 1,
                c);
        double i2 = working.line(
                "share of the spread between sites",
                q > k - 1 ? 100 * (q - k + 1) / q : 0,
                "%",
                q > k - 1 ? "100 × ({} − {}) ÷ {}" : "0, where 100 × ({} − {}) ÷ {} is not above 0",
                q,
                k - 1,
                q);
        double[] weights = Pooled.weights(variances, tau2);
        double mean = working.step(
                "mean over sites", Pooled.meanTerms(effects, weights), Pooled.mean(effects, weights), "bu/ac");
        double weight = Pooled.sum(weights);
        double se = working.line("its standard error", 1 / Math.sqrt(weight), "bu/ac", "1 ÷ √({})", weight);
        double small = working.step(
                "spread of the sites over what their errors explain",
                "(" + Pooled.squareTerms(effects, weights, mean) + ") ÷ " + (k - 1),
                Pooled.squares(effects, weights, mean) / (k - 1),
                "");
        double z = StandardNormal.quantile((1 + confidence) / 2);
        double t = StudentT.forConfidence(confidence, k - 1);
        double modified = Math.sqrt(Math.max(1, small));
        Outputs outputs = new Outputs()
                .put("pooled", mean)
                .put("standard_error", se)
                .put("tau2", tau2)
                .put("q", q)
                .put(
                        "p_q",
                        working.line(
                                "chance of so much disagreement",
                                ChiSquaredDistribution.of(k - 1).survivalProbability(q),
                                "",
                                "upper tail of chi-squared at {} with {} degrees of freedom",
                                q,
                                k - 1))
                .put("i2_pct", i2)
                .put("fixed", fixed);
        ends(working, outputs, "low", "high", "interval", mean, z, se, 1);
        ends(working, outputs, "hk_low", "hk_high", "interval for few sites", mean, t, se, Math.sqrt(small));
        ends(working, outputs, "hk_modified_low", "hk_modified_high", "modified interval", mean, t, se, modified);
        if (k > 2) {
            double field =
                    working.line("spread of a next field", Math.sqrt(tau2 + se * se), "bu/ac", "√({} + {}²)", tau2, se);
            ends(
                    working,
                    outputs,
                    "next_low",
                    "next_high",
                    "next field",
                    mean,
                    StudentT.forConfidence(confidence, k - 2),
                    field,
                    1);
        }
        if (small < 1) {
            working.caution("The sites agree better than their errors allow: the interval for few sites is too narrow,"
                    + " take the modified one.");
        }
        return outputs;
    }

    private static void ends(
            Working working,
            Outputs outputs,
            String low,
            String high,
            String label,
            double mean,
            double reach,
            double error,
            double scale) {
        outputs.put(
                low,
                working.line(
                        label + ", lower end",
                        mean - reach * scale * error,
                        "bu/ac",
                        "{} − {} × {} × {}",
                        mean,
                        reach,
                        scale,
                        error));
        outputs.put(
                high,
                working.line(
                        label + ", upper end",
                        mean + reach * scale * error,
                        "bu/ac",
                        "{} + {} × {} × {}",
                        mean,
                        reach,
                        scale,
                        error));
    }
}
