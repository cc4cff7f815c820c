package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether the volume that went on is near enough to the volume intended.
 *
 *   actual = gallons used/acres;  off = 100·(actual/intended − 1) [%]; adjust where it is more than 5 % either way
 *
 * Source: common practice (5 %, seen at second hand).
 */
public final class VolumeCheck {
    public static final Figure FIGURE = Figure.declare("volume-check", Subject.SPRAYING)
            .question("Did as much spray go on as was intended?")
            .input(number("used_gal", "Spray used", "gal", Range.POSITIVE, "640"))
            .input(number("acres", "Acres it was used on", "ac", Range.POSITIVE, "40"))
            .input(Asked.VOLUME)
            .input(number("limit_pct", "Farthest off allowed", "%", Range.above(0, 100), "5")
                    .orElse("5"))
            .output("actual_gpa", "Went on", "gal/ac")
            .output("off_pct", "Off the intended", "%")
            .output("verdict", "In words", "")
            .formula("off = 100 × (used ÷ acres ÷ intended − 1)")
            .source("Common practice", PRACTICE)
            .validity("Acres truly sprayed, overlaps and headlands counted once.")
            .caution("Product goes off with the volume: too much may pass the label's rate.")
            .example(
                    "used_gal=640 acres=40 gpa=15",
                    "actual_gpa=16.0 off_pct=6.67 verdict=adjust",
                    "640 ÷ 40 ÷ 15, by hand",
                    COMPUTED)
            .example("used_gal=588 acres=40 gpa=15", "actual_gpa=14.7 off_pct=-2.0 verdict=good", "by hand", COMPUTED)
            .model(VolumeCheck::solve);

    private VolumeCheck() {}

    private static Outputs solve(Given given, Working working) {
        double used = given.number("used_gal");
        double acres = given.number("acres");
        double intended = given.number("gpa");
        double actual = working.line("went on", used / acres, "gal/ac", "{} ÷ {}", used, acres);
        double off = working.line(
                "off the intended", 100 * (actual / intended - 1), "%", "100 × ({} ÷ {} − 1)", actual, intended);
        return new Outputs()
                .put("actual_gpa", actual)
                .put("off_pct", off)
                .put("verdict", Math.abs(off) > given.number("limit_pct") ? "adjust" : "good");
    }
}
