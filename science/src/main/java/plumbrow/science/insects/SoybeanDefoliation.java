package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * At which share of the leaves eaten a soybean field is treated, by the rule of a state and the stage of the crop.
 *
 * The states differ, most at pod fill: 10 % (Ohio), 15 % (Pennsylvania, South Carolina), 20 % (Iowa, Nebraska). Never an
 * average of them: the person picks his state.
 *
 * Source: crops.extension.iastate.edu (Iowa, Nebraska), wfin.com 2024 (Ohio), lancasteragcouncil.com (Pennsylvania),
 * agfax.com (South Carolina).
 */
public final class SoybeanDefoliation {
    private static final List<String> STATES = List.of("iowa", "nebraska", "ohio", "pennsylvania", "south-carolina");
    private static final List<String> STAGES = List.of("vegetative", "bloom", "pods", "full-seed");

    /** Rows as the states, columns as the stages; share of the whole canopy [%]. */
    private static final double[][] THRESHOLD_PCT = {
        {30, 20, 20, 20}, {30, 20, 20, 15}, {30, 30, 10, 15}, {25, 15, 15, 25}, {30, 15, 15, 15}
    };

    public static final Figure FIGURE = Figure.declare("soybean-defoliation", Subject.INSECTS)
            .question("Are so many soybean leaves eaten that the field is treated?")
            .input(number("defoliation_pct", "Leaf eaten, mean of the whole canopy", "%", Range.PERCENT, "18"))
            .input(word("state", "Rule of the state", STATES, "iowa"))
            .input(word("stage", "Stage: pods is pod set to fill, full-seed is R6", STAGES, "pods"))
            .output("threshold_pct", "Threshold", "%")
            .output("of_threshold", "Leaf eaten over the threshold", "")
            .output("verdict", "In words", "")
            .formula("treat from the threshold of the state and stage on, if the insects are still there")
            .source(
                    "[defoliation-iowa]; [defoliation-ohio-2024]; [defoliation-pennsylvania]; [defoliation-carolina]",
                    VERIFIED)
            .validity(
                    "Whole plants, whole field. Nebraska prints 15 to 20 % at full seed: 15 is taken. No treatment after R6.5.")
            .caution("States differ by a factor of two at pod fill: use your own state's rule, never a mean of them.")
            .caution("People see more leaf eaten than there is: hold leaves against a picture key.")
            .example(
                    "defoliation_pct=18 state=iowa stage=pods",
                    "threshold_pct=20 of_threshold=0.9 verdict=below the threshold",
                    "[defoliation-iowa]",
                    VERIFIED)
            .example(
                    "defoliation_pct=30 state=iowa stage=vegetative",
                    "threshold_pct=30",
                    "[defoliation-iowa]",
                    VERIFIED)
            .example(
                    "defoliation_pct=18 state=ohio stage=pods",
                    "threshold_pct=10 verdict=treat if the insects are still there",
                    "[defoliation-ohio-2024]",
                    VERIFIED)
            .example(
                    "defoliation_pct=18 state=ohio stage=full-seed",
                    "threshold_pct=15",
                    "[defoliation-ohio-2024]",
                    VERIFIED)
            .example(
                    "defoliation_pct=18 state=pennsylvania stage=full-seed",
                    "threshold_pct=25",
                    "[defoliation-pennsylvania]",
                    VERIFIED)
            .example(
                    "defoliation_pct=18 state=south-carolina stage=bloom",
                    "threshold_pct=15",
                    "[defoliation-carolina]",
                    VERIFIED)
            .model(SoybeanDefoliation::solve);

    private SoybeanDefoliation() {}

    private static Outputs solve(Given given, Working working) {
        double eaten = given.number("defoliation_pct");
        double threshold = THRESHOLD_PCT[STATES.indexOf(given.word("state"))][STAGES.indexOf(given.word("stage"))];
        double of = working.line("leaf eaten over the threshold", eaten / threshold, "", "{} ÷ {}", eaten, threshold);
        return new Outputs()
                .put("threshold_pct", threshold)
                .put("of_threshold", of)
                .put("verdict", of >= 1 ? "treat if the insects are still there" : "below the threshold");
    }
}
