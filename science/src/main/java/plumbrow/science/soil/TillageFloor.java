package plumbrow.science.soil;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import java.util.Arrays;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How even the floor is that a tillage tool leaves, from depths dug across the swath.
 *
 *   sd with n − 1;  CV = 100·sd/mean [%];  peak to valley = deepest − shallowest
 *
 * At least two depths [in], ten or more across the width and on two passes for a judgement. CV up to 15 % is good, above
 * 25 % poor; a ridge of more than 0.5 in at planting depth asks for re-levelling: our limits, common practice.
 */
public final class TillageFloor {
    private static final double GOOD_CV_PCT = 15;
    private static final double POOR_CV_PCT = 25;
    private static final double RIDGE_IN = 0.5;
    private static final int ENOUGH = 10;

    public static final Figure FIGURE = Figure.declare("tillage-floor", Subject.SOIL)
            .question("How even is the floor that the tool leaves?")
            .input(list(
                    "depths_in",
                    "Depths to the floor, across the swath",
                    "in",
                    Range.above(0, 40),
                    "2.0,2.25,1.75,2.5,2.0,2.25,2.0,1.75,2.25,2.0"))
            .output("mean_in", "Mean depth", "in")
            .output("sd_in", "Standard deviation", "in")
            .output("cv_pct", "Coefficient of variation", "%")
            .output("deepest_in", "Deepest", "in")
            .output("shallowest_in", "Shallowest", "in")
            .output("range_in", "Peak to valley", "in")
            .output("floor", "The floor is", "")
            .formula("sd with n − 1; CV = 100 × sd ÷ mean; good up to 15 %, poor above 25 %")
            .source("Arithmetic; limits by common practice", PRACTICE)
            .validity("At least two depths; ten or more, over two passes, for a judgement.")
            .caution(
                    "Stop with the tool in the ground, level it both ways, then dig: the surface does not show the floor.")
            .example(
                    "depths_in=2.0,2.25,1.75,2.5,2.0,2.25,2.0,1.75,2.25,2.0",
                    "mean_in=2.075 sd_in=0.2372 cv_pct=11.43 deepest_in=2.5 shallowest_in=1.75 range_in=0.75 floor=good",
                    "independent arithmetic",
                    COMPUTED)
            .model(TillageFloor::solve);

    private TillageFloor() {}

    /** Mean of depths. */
    public static double mean(double[] depths) {
        return Arrays.stream(depths).average().orElseThrow();
    }

    /** Standard deviation of two or more depths, with n − 1. */
    public static double standardDeviation(double[] depths) {
        double mean = mean(depths);
        double squares = Arrays.stream(depths)
                .map(depth -> (depth - mean) * (depth - mean))
                .sum();
        return Math.sqrt(squares / (depths.length - 1));
    }

    private static Outputs solve(Given given, Working working) {
        double[] depths = given.list("depths_in");
        if (depths.length < 2) {
            throw given.refuse("depths_in", "at least two depths with commas between");
        }
        double mean =
                working.step("mean depth", "(" + Numbers.terms(depths) + ") ÷ " + depths.length, mean(depths), "in");
        double deviation = working.line(
                "standard deviation",
                standardDeviation(depths),
                "in",
                "√(squares of the distances from {} ÷ {})",
                mean,
                depths.length - 1.0);
        double variation =
                working.line("coefficient of variation", 100 * deviation / mean, "%", "100 × {} ÷ {}", deviation, mean);
        double deepest = Arrays.stream(depths).max().orElseThrow();
        double shallowest = Arrays.stream(depths).min().orElseThrow();
        double range = working.line("peak to valley", deepest - shallowest, "in", "{} − {}", deepest, shallowest);
        if (depths.length < ENOUGH) {
            working.caution("Fewer than ten depths: dig more, across the width and on a second pass.");
        }
        if (range > RIDGE_IN) {
            working.caution("More than half an inch between peak and valley: at planting depth, level the tool again.");
        }
        return new Outputs()
                .put("mean_in", mean)
                .put("sd_in", deviation)
                .put("cv_pct", variation)
                .put("deepest_in", deepest)
                .put("shallowest_in", shallowest)
                .put("range_in", range)
                .put("floor", variation <= GOOD_CV_PCT ? "good" : variation > POOR_CV_PCT ? "poor" : "fair");
    }
}
