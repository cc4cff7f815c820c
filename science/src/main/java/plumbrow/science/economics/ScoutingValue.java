package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What scouting is worth before a treat-or-not decision.
 *
 *   P(positive) = p·sens + (1−p)·(1−spec);  P(pest | positive) = p·sens / P(positive)
 *   value = P(+)·max(0, treat | +) + P(−)·max(0, treat | −) − max(0, treat)
 *
 *   p  chance of a damaging pest;  sens, spec  chance that scouting is right with and without it
 *   treating gains G if the pest is there, loses C if it is not [$/ac]; not treating is 0
 *
 * Source: Bayes' rule and {@link SampleInformation}.
 */
public final class ScoutingValue {
    public static final Figure FIGURE = Figure.declare("scouting-value", Subject.ECONOMICS)
            .question("What is scouting worth before deciding whether to treat?")
            .input(number("pest_chance", "Chance of a damaging pest", "", Range.SHARE, "0.3"))
            .input(number(
                    "gain_if_pest", "Treating gains, after its cost, if the pest is there", "$/ac", Range.ANY, "20"))
            .input(number("loss_if_none", "Treating costs if it is not", "$/ac", Range.NOT_NEGATIVE, "20"))
            .input(number("sensitivity", "Chance that scouting finds a pest that is there", "", Range.SHARE, "0.85"))
            .input(number("specificity", "Chance that scouting clears a field without it", "", Range.SHARE, "0.90"))
            .input(number("scouting_usd_ac", "Cost of scouting", "$/ac", Range.NOT_NEGATIVE, "2")
                    .orElse("0"))
            .output("positive_chance", "Chance of a positive", "")
            .sometimes("pest_after_positive", "Chance of the pest after a positive", "")
            .sometimes("pest_after_negative", "Chance of the pest after a negative", "")
            .output("value_usd_ac", "Value of scouting before its cost", "$/ac")
            .output("net_usd_ac", "Value of scouting after its cost", "$/ac")
            .output("perfect_usd_ac", "Value of a scout who is never wrong", "$/ac")
            .formula("value = Σ over results of chance × best action after it − best action without scouting")
            .source("[raiffa-schlaifer-1961]; defined as in [voi]", VERIFIED)
            .validity("Two actions, two states. A result that can't occur has no chance after it. Risk is not weighed.")
            .example(
                    "pest_chance=.3 gain_if_pest=20 loss_if_none=20 sensitivity=.85 specificity=.90",
                    "positive_chance=.325 pest_after_positive=.7846 pest_after_negative=.0667 value_usd_ac=3.70 perfect_usd_ac=6.00",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "pest_chance=.3 gain_if_pest=20 loss_if_none=20 sensitivity=.5 specificity=.5",
                    "value_usd_ac=0.00",
                    "a coin in place of a scout",
                    COMPUTED)
            .model(ScoutingValue::solve);

    private ScoutingValue() {}

    private static Outputs solve(Given given, Working working) {
        double p = given.number("pest_chance");
        double gain = given.number("gain_if_pest");
        double loss = given.number("loss_if_none");
        double sensitivity = given.number("sensitivity");
        double specificity = given.number("specificity");
        double cost = given.number("scouting_usd_ac");
        double positive = working.line(
                "chance of a positive",
                p * sensitivity + (1 - p) * (1 - specificity),
                "",
                "{} × {} + (1 − {}) × (1 − {})",
                p,
                sensitivity,
                p,
                specificity);
        double[] chances = {p, 1 - p};
        double[][] payoffs = {{gain, -loss}, {0, 0}};
        double[][] likelihoods = {{sensitivity, 1 - specificity}, {1 - sensitivity, specificity}};
        double without = working.line(
                "best without scouting",
                PerfectInformation.bestExpected(chances, payoffs),
                "$/ac",
                "the better of 0 and {} × {} − (1 − {}) × {}",
                p,
                gain,
                p,
                loss);
        Outputs outputs = new Outputs().put("positive_chance", positive);
        double afterPositive = after(working, outputs, "positive", p * sensitivity, positive, gain, loss);
        double afterNegative = after(working, outputs, "negative", p * (1 - sensitivity), 1 - positive, gain, loss);
        double value = working.line(
                "value of scouting",
                Math.max(SampleInformation.withSignal(chances, payoffs, likelihoods) - without, 0),
                "$/ac",
                "{} + {} − {} $/ac",
                afterPositive,
                afterNegative,
                without);
        double perfect = working.line(
                "value of a scout who is never wrong",
                Math.max(PerfectInformation.withInformation(chances, payoffs) - without, 0),
                "$/ac",
                "{} × the better of 0 and {}, less {} $/ac",
                p,
                gain,
                without);
        return outputs.put("value_usd_ac", value)
                .put("net_usd_ac", working.line("after its cost", value - cost, "$/ac", "{} − {} $/ac", value, cost))
                .put("perfect_usd_ac", perfect);
    }

    /** Shows what one result says, and hands back its share of the payoff with the better action after it. */
    private static double after(
            Working working, Outputs outputs, String result, double pestToo, double seen, double gain, double loss) {
        if (seen <= 0) {
            return 0;
        }
        double pest =
                working.line("chance of the pest after a " + result, pestToo / seen, "", "{} ÷ {}", pestToo, seen);
        outputs.put("pest_after_" + result, pest);
        return working.line(
                "share of the payoff after a " + result,
                seen * Math.max(pest * gain - (1 - pest) * loss, 0),
                "$/ac",
                "{} × the better of 0 and {} × {} − (1 − {}) × {}",
                seen,
                pest,
                gain,
                pest,
                loss);
    }
}
