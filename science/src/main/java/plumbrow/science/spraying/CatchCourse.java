package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The course on which fluid ounces caught are gallons an acre, and whether the nozzles of a boom are alike.
 *
 *   L = 43,560·12/(128·W) = 4083.75/W      [ft];  W  nozzle spacing, band or row width [in]
 *
 * Replace a nozzle more than 10 % off (Ozkan, Ohio State; USGA 2016); 5 % is the stricter Australian limit. A low one is
 * blocked, a high one worn.
 *
 * Source: LSU AgCenter, Ounces Equal Gallons; Ozkan, Ohio State (farmanddairy.com).
 */
public final class CatchCourse {
    private static final double OUNCE_COURSE = 43_560.0 * 12 / 128;

    public static final Figure FIGURE = Figure.declare("catch-course", Subject.SPRAYING)
            .question("Over which course do ounces caught equal gallons an acre?")
            .input(Asked.SPACING)
            .output("course_ft", "Length of the course", "ft")
            .formula("course = 43,560 × 12 ÷ (128 × inches)")
            .source("[lsu-ounces]; [ozkan-catch]", VERIFIED)
            .validity(
                    "Time the course at spraying speed, then catch that long: one nozzle, or in bands and rows all nozzles of one width.")
            .example("spacing_in=10", "course_ft=408", "tables of [lsu-ounces] and [ozkan-catch]", VERIFIED)
            .example("spacing_in=12", "course_ft=340", "[lsu-ounces], table", VERIFIED)
            .example("spacing_in=14", "course_ft=292", "LSU cuts off to 291", COMPUTED)
            .example("spacing_in=15", "course_ft=272", "tables of [lsu-ounces] and [ozkan-catch]", VERIFIED)
            .example("spacing_in=16", "course_ft=255", "[lsu-ounces], table", VERIFIED)
            .example("spacing_in=18", "course_ft=227", "[lsu-ounces], table", VERIFIED)
            .example("spacing_in=20", "course_ft=204", "tables of [lsu-ounces] and [ozkan-catch]", VERIFIED)
            .example("spacing_in=22", "course_ft=186", "LSU cuts off to 185", COMPUTED)
            .example("spacing_in=24", "course_ft=170", "[lsu-ounces], table", VERIFIED)
            .example("spacing_in=26", "course_ft=157", "[lsu-ounces], table", VERIFIED)
            .example("spacing_in=28", "course_ft=146", "[lsu-ounces], table", VERIFIED)
            .example("spacing_in=30", "course_ft=136", "tables of [lsu-ounces] and [ozkan-catch]", VERIFIED)
            .example("spacing_in=40", "course_ft=102", "tables of [lsu-ounces] and [ozkan-catch]", VERIFIED)
            .model(CatchCourse::solve);

    public static final Figure NOZZLES = Figure.declare("nozzle-check", Subject.SPRAYING)
            .question("Which nozzles of the boom must go?")
            .input(list(
                    "caught_oz",
                    "Caught from each nozzle in the same time",
                    "fl oz",
                    Range.POSITIVE,
                    "51,52,50,58,51,49"))
            .input(number("limit_pct", "Farthest off allowed", "%", Range.above(0, 100), "10")
                    .orElse("10"))
            .input(number("new_oz", "Caught from a new matching nozzle", "fl oz", Range.POSITIVE, "50")
                    .optional())
            .output("mean_oz", "Mean", "fl oz")
            .output("off_pct", "Each against the mean", "%")
            .output("off_new_pct", "Each against the new nozzle, or the mean without one", "%")
            .output("replace", "Nozzles to clean or replace, counted from 1", "")
            .formula("off = 100 × (caught − mean) ÷ mean")
            .source("[ozkan-catch]; [usga-10-percent]", VERIFIED)
            .validity("All caught at one pressure and in one time. Judged against the new nozzle where one was caught.")
            .example(
                    "caught_oz=51,52,50,58,51,49",
                    "mean_oz=51.83 off_pct=-1.6,0.3,-3.5,11.9,-1.6,-5.5 replace=[4]",
                    "nozzle 4 is +11.9 %, nozzle 6 −5.5 %",
                    COMPUTED)
            .example("caught_oz=51,52,50,58,51,49 limit_pct=5", "replace=[4, 6]", "independent arithmetic", COMPUTED)
            .example(
                    "caught_oz=51,52,50,58,51,49 new_oz=50",
                    "off_new_pct=2.0,4.0,0.0,16.0,2.0,-2.0 replace=[4]",
                    "by hand",
                    COMPUTED)
            .model(CatchCourse::solveNozzles);

    private CatchCourse() {}

    /** Course [ft] over which fluid ounces caught are gallons an acre, at a width [in]. */
    public static double courseFeet(double widthInches) {
        return OUNCE_COURSE / widthInches;
    }

    private static Outputs solve(Given given, Working working) {
        double spacing = given.number("spacing_in");
        return new Outputs()
                .put(
                        "course_ft",
                        working.line("course", courseFeet(spacing), "ft", "43,560 × 12 ÷ (128 × {} in)", spacing));
    }

    private static Outputs solveNozzles(Given given, Working working) {
        double[] caught = given.list("caught_oz");
        double mean = working.step(
                "mean",
                "(" + Numbers.terms(caught) + ") ÷ " + caught.length,
                Arrays.stream(caught).average().orElseThrow(),
                "fl oz");
        double target = given.numberOr("new_oz", mean);
        double limit = given.number("limit_pct");
        double[] off = Arrays.stream(caught).map(oz -> 100 * (oz - mean) / mean).toArray();
        double[] offTarget = new double[caught.length];
        List<String> replace = new ArrayList<>();
        for (int i = 0; i < caught.length; i++) {
            offTarget[i] = working.line(
                    "nozzle " + (i + 1),
                    100 * (caught[i] - target) / target,
                    "%",
                    "{} fl oz against {} fl oz",
                    caught[i],
                    target);
            if (Math.abs(offTarget[i]) > limit) {
                replace.add(Integer.toString(i + 1));
            }
        }
        return new Outputs()
                .put("mean_oz", mean)
                .put("off_pct", off)
                .put("off_new_pct", offTarget)
                .put("replace", replace.isEmpty() ? List.of("none") : replace);
    }
}
