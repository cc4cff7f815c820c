package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What several passes together leave, when each takes its share of what the others left.
 *
 *   survivors = Π(1 − c_i)
 *
 * c_i control of pass i [%], 0 to 100. Independence is assumed: a plant that survives because it resists, is tall or is
 * shaded survives the next pass of the same group too.
 *
 * Source: product rule, common practice.
 */
public final class PassesControl {
    public static final Figure FIGURE = Figure.declare("passes-control", Subject.WEEDS)
            .question("What do several passes leave together?")
            .input(list("controls_pct", "Control of each pass on the same plants", "%", Range.PERCENT, "60,80,90"))
            .output("control_pct", "Control by all passes", "%")
            .output("survivors_pct", "Plants left", "%")
            .formula("left = (1 − c₁) × (1 − c₂) × …; control = 1 − left")
            .source("Product rule for independent passes", PRACTICE)
            .validity("Passes that reach the same plants and work independently, each 0 to 100 %.")
            .caution(
                    "Plants that resist one pass resist the next of the same group: two such passes are not independent.")
            .example("controls_pct=90,80", "control_pct=98.000", "independent arithmetic", COMPUTED)
            .example("controls_pct=60,80,90", "control_pct=99.200", "independent arithmetic", COMPUTED)
            .example("controls_pct=85,85,50", "control_pct=98.875", "independent arithmetic", COMPUTED)
            .example("controls_pct=75,95", "control_pct=98.750 survivors_pct=1.250", "independent arithmetic", COMPUTED)
            .model(PassesControl::solve);

    private PassesControl() {}

    /** Plants left [%] by passes of a control [%] each. */
    public static double survivorsPct(double... controlsPct) {
        double left = 100;
        for (double control : controlsPct) {
            left *= 1 - control / 100;
        }
        return left;
    }

    private static Outputs solve(Given given, Working working) {
        double left = 100;
        double[] controls = given.list("controls_pct");
        for (int i = 0; i < controls.length; i++) {
            left = working.line(
                    "left after pass " + (i + 1),
                    left * (1 - controls[i] / 100),
                    "%",
                    "{} % × (1 − {} %)",
                    left,
                    controls[i]);
        }
        double control = working.line("control by all passes", 100 - left, "%", "100 % − {} %", left);
        return new Outputs().put("control_pct", control).put("survivors_pct", left);
    }
}
