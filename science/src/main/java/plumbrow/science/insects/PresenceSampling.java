package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * When to stop looking at plants that are either infested or not: stop lines of a sequential test.
 *
 *   g = ln[p₁(1−p₀)/(p₀(1−p₁))];  s = ln[(1−p₀)/(1−p₁)]/g;  l = ln[β/(1−α)]/g;  u = ln[(1−β)/α]/g
 *   low if infested ≤ l + s·n;  high if infested ≥ u + s·n
 *
 *   p₀, p₁  share infested that is surely harmless, surely harmful, p₀ < p₁
 *   α, β    chance of calling high when it is p₀, of calling low when it is p₁;  n plants looked at
 *
 * A negative lower line means that low can't be called yet.
 *
 * Source: Wald's sequential probability ratio test.
 */
public final class PresenceSampling {
    public static final Figure FIGURE = Figure.declare("presence-sampling", Subject.INSECTS)
            .question("Have enough plants been looked at to call an infestation low or high?")
            .input(number("harmless_share", "Share infested that is surely harmless", "", Range.open(0, 1), "0.60"))
            .input(number("harmful_share", "Share infested that is surely harmful", "", Range.open(0, 1), "0.85"))
            .input(number("false_alarm", "Accepted chance of a false alarm", "", Range.open(0, 0.5), "0.10"))
            .input(number("missed", "Accepted chance of a missed attack", "", Range.open(0, 0.5), "0.10"))
            .input(number("plants", "Plants looked at", "plants", Range.closed(1, 100_000), "20"))
            .input(number("infested", "Of them infested", "plants", Range.closed(0, 100_000), "15")
                    .optional())
            .output("slope", "Slope of both lines", "")
            .output("lower", "Lower line at no plants", "")
            .output("upper", "Upper line at no plants", "")
            .sometimes("low_at_most", "Low at this number or fewer", "plants")
            .output("high_at_least", "High at this number or more", "plants")
            .sometimes("verdict", "In words", "")
            .formula("low if infested ≤ l + s × plants; high if infested ≥ u + s × plants")
            .source("Sequential probability ratio test of [wald-1945], bounds as in [wikipedia-sprt]", VERIFIED)
            .validity(
                    "Harmless below harmful. Low has no number while the lower line is below 0; the verdict needs infested.")
            .example(
                    "harmless_share=.60 harmful_share=.85 false_alarm=.10 missed=.10 plants=20 infested=15",
                    "slope=.7379 lower=-1.653 upper=1.653 low_at_most=13.0 high_at_least=17.0 verdict=keep sampling",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "harmless_share=.05 harmful_share=.10 false_alarm=.10 missed=.10 plants=50",
                    "slope=.0724 lower=-2.941 upper=2.941 low_at_most=0.0 high_at_least=7.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "harmless_share=.05 harmful_share=.10 false_alarm=.10 missed=.10 plants=100",
                    "low_at_most=4.0 high_at_least=11.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "harmless_share=.03 harmful_share=.06 false_alarm=.2 missed=.1 plants=100",
                    "slope=.0434 lower=-2.870 upper=2.076 low_at_most=1.0 high_at_least=7.0",
                    "independent arithmetic",
                    COMPUTED)
            .model(PresenceSampling::solve);

    private PresenceSampling() {}

    private static Outputs solve(Given given, Working working) {
        double harmless = given.number("harmless_share");
        double harmful = given.number("harmful_share");
        double alarm = given.number("false_alarm");
        double missed = given.number("missed");
        double plants = given.number("plants");
        if (harmless >= harmful) {
            throw given.refuse("harmless_share", "a share below harmful_share (" + Numbers.plain(harmful) + ")");
        }
        double g = working.line(
                "g",
                Math.log(harmful * (1 - harmless) / (harmless * (1 - harmful))),
                "",
                "ln[{} × (1 − {}) ÷ ({} × (1 − {}))]",
                harmful,
                harmless,
                harmless,
                harmful);
        double slope = working.line(
                "slope",
                Math.log((1 - harmless) / (1 - harmful)) / g,
                "",
                "ln[(1 − {}) ÷ (1 − {})] ÷ {}",
                harmless,
                harmful,
                g);
        double lower = working.line(
                "lower line", Math.log(missed / (1 - alarm)) / g, "", "ln[{} ÷ (1 − {})] ÷ {}", missed, alarm, g);
        double upper = working.line(
                "upper line", Math.log((1 - missed) / alarm) / g, "", "ln[(1 − {}) ÷ {}] ÷ {}", missed, alarm, g);
        double lowAtMost = Math.floor(
                working.line("low up to", lower + slope * plants, "plants", "{} + {} × {}", lower, slope, plants));
        double highAtLeast = Math.ceil(
                working.line("high from", upper + slope * plants, "plants", "{} + {} × {}", upper, slope, plants));
        Outputs outputs = new Outputs().put("slope", slope).put("lower", lower).put("upper", upper);
        if (lowAtMost >= 0) {
            outputs.put("low_at_most", lowAtMost);
        } else {
            working.caution("Low can't be called after so few plants.");
        }
        outputs.put("high_at_least", highAtLeast);
        if (given.has("infested")) {
            double infested = given.number("infested");
            if (infested > plants) {
                throw given.refuse("infested", "a number not above plants (" + Numbers.plain(plants) + ")");
            }
            outputs.put("verdict", infested <= lowAtMost ? "low" : infested >= highAtLeast ? "high" : "keep sampling");
        }
        return outputs;
    }
}
