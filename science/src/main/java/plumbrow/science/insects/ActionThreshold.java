package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * From an injury level to the count at which to act, and an injury level from a sample of known harm.
 *
 *   ET = EIL·2^(−lead/Td), and by the quarter rule 0.75·EIL;  EIL = C·N/(V·I)
 *
 *   lead  days from the order to the spray;  Td  doubling time [d];  N pests do the share I of harm to a crop worth V [$/ac]
 *
 * Source: Pedigo, Hutchins & Higley 1986 (from memory); second form genent.cals.ncsu.edu, economics of pest control; 0.75 is
 * what the bean leaf beetle tables of Iowa and Illinois come from.
 */
public final class ActionThreshold {
    private static final double QUARTER_RULE = 0.75;

    public static final Figure ACTION = Figure.declare("action-threshold", Subject.INSECTS)
            .question("At which count must the treatment be ordered so that the injury level is not passed?")
            .input(number("injury_level", "Economic injury level", "pests per sampling unit", Range.POSITIVE, "674"))
            .input(number("lead_days", "Days from the order to the spray", "d", Range.closed(0, 60), "7"))
            .input(number("doubling_days", "Days in which the pest doubles", "d", Range.POSITIVE, "4.87"))
            .output("threshold", "Count to act on", "pests per sampling unit")
            .output("quarter_rule", "Count to act on where the growth is not known", "pests per sampling unit")
            .formula("threshold = injury level × 2^(−lead ÷ doubling days); growth not known: 0.75 × injury level")
            .source("[pedigo-1986]", MEMORY)
            .validity(
                    "Steady doubling, not longer than two weeks ahead. A published threshold of your state goes before it.")
            .caution("Soybean aphids: never below 250 a plant, see aphid-threshold.")
            .example(
                    "injury_level=674 lead_days=7 doubling_days=6.8",
                    "threshold=330 quarter_rule=505.5",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "injury_level=674 lead_days=7 doubling_days=4.87",
                    "threshold=249",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "injury_level=674 lead_days=7 doubling_days=3", "threshold=134", "independent arithmetic", COMPUTED)
            .model(ActionThreshold::solveAction);

    public static final Figure SAMPLE = Figure.declare("injury-level-from-sample", Subject.INSECTS)
            .question("At how many pests does control pay, from a count whose harm is known?")
            .input(number("cost_usd_ac", "Cost of control", "$/ac", Range.NOT_NEGATIVE, "20"))
            .input(number("pests", "Pests that did the harm", "pests/ac", Range.POSITIVE, "800"))
            .input(number("crop_usd_ac", "Worth of the crop", "$/ac", Range.POSITIVE, "500"))
            .input(number("harm_pct", "Harm they did, share of the crop's worth", "%", Range.above(0, 100), "10"))
            .output("density", "Economic injury level", "pests/ac")
            .formula("injury level = cost × pests ÷ (worth of the crop × harm)")
            .source("[ncsu-pest-economics]", VERIFIED)
            .validity("Harm grows in step with the count. Control prevents all of it: divide by the share it prevents.")
            .example(
                    "cost_usd_ac=20 pests=800 crop_usd_ac=500 harm_pct=10",
                    "density=320",
                    "[ncsu-pest-economics]",
                    VERIFIED)
            .model(ActionThreshold::solveSample);

    private ActionThreshold() {}

    /** Count to act on so that the injury level is reached after the lead, in the unit of the injury level. */
    public static double threshold(double injuryLevel, double leadDays, double doublingDays) {
        return injuryLevel * Math.pow(2, -leadDays / doublingDays);
    }

    private static Outputs solveAction(Given given, Working working) {
        double level = given.number("injury_level");
        double lead = given.number("lead_days");
        double doubling = given.number("doubling_days");
        double count = working.line(
                "count to act on", threshold(level, lead, doubling), "", "{} × 2^(−{} ÷ {})", level, lead, doubling);
        double quarter = working.line("growth not known", QUARTER_RULE * level, "", "{} × {}", QUARTER_RULE, level);
        return new Outputs().put("threshold", count).put("quarter_rule", quarter);
    }

    private static Outputs solveSample(Given given, Working working) {
        double cost = given.number("cost_usd_ac");
        double pests = given.number("pests");
        double worth = given.number("crop_usd_ac");
        double harm = given.number("harm_pct");
        return new Outputs()
                .put(
                        "density",
                        working.line(
                                "injury level",
                                cost * pests / (worth * harm / 100),
                                "pests/ac",
                                "{} × {} ÷ ({} × {} ÷ 100)",
                                cost,
                                pests,
                                worth,
                                harm));
    }
}
