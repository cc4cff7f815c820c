package plumbrow.science.trials;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The response to rising doses as one curve. The curve and its fitting are {@link LogLogistic}.
 *
 *   RSE = √(RSS/(n − 4));  ED_p = e·(p/(100 − p))^{1/b}
 *
 * A fit that does not fall with the dose, or whose middle lies far outside the doses tested, is refused.
 *
 * Source: Seefeldt, Jensen & Fuerst 1995, Weed Technol. 9:218; data and values of the check: R package drc.
 */
public final class DoseResponseFit {
    private static final String RYEGRASS_X =
            "0,0,0,0,0,0,.94,.94,.94,1.88,1.88,1.88,3.75,3.75,3.75,7.5,7.5,7.5,15,15,15,30,30,30";
    private static final String RYEGRASS_Y =
            "7.58,8,8.328571429,7.25,7.375,7.9625,8.355555556,6.914285714,7.75,6.871428571,6.45,5.922222222,1.925,2.885714286,"
                    + "4.233333333,1.1875,.857142857,1.057142857,.6875,.525,.825,.25,.22,.44";
    private static final int PARAMETERS = 4;

    public static final Figure FIGURE = Figure.declare("dose-response-fit", Subject.TRIALS)
            .question("Which curve of response to dose do these trials show?")
            .input(list("doses", "Doses, any one unit; 0 is untreated", "", Range.NOT_NEGATIVE, RYEGRASS_X))
            .input(list("responses", "Response at each dose, such as weight or length left", "", Range.ANY, RYEGRASS_Y))
            .output("slope_b", "Slope at the middle", "")
            .output("lower_c", "Lower limit", "")
            .output("upper_d", "Upper limit", "")
            .output("ed50_e", "Dose halfway between the limits", "")
            .output("residual_se", "Spread around the curve", "")
            .output("slope_b_se", "Standard error of the slope", "")
            .output("lower_c_se", "Standard error of the lower limit", "")
            .output("upper_d_se", "Standard error of the upper limit", "")
            .output("ed50_e_se", "Standard error of the middle dose", "")
            .output("ed10", "Dose for a tenth of the way", "")
            .output("ed90", "Dose for nine tenths of the way", "")
            .formula("response = c + (d − c) ÷ (1 + (dose ÷ e)^b), by least squares")
            .source("[seefeldt-1995], as in [drc]", VERIFIED)
            .validity(
                    "Five or more responses at four or more doses, falling as the dose rises. A middle below a tenth of the lowest"
                            + " or above ten times the highest dose is refused. Standard errors come from the observed curvature.")
            .example(
                    "doses=" + RYEGRASS_X + " responses=" + RYEGRASS_Y,
                    "slope_b=2.98222 lower_c=.48141 upper_d=7.79296 ed50_e=3.05795 residual_se=.5196256 ed10=1.46371"
                            + " ed90=6.3886",
                    "ryegrass by ferulic acid, values of [drc]",
                    VERIFIED)
            .model(DoseResponseFit::solve);

    private DoseResponseFit() {}

    private static Outputs solve(Given given, Working working) {
        double[] doses = given.list("doses");
        double[] responses = given.list("responses");
        if (responses.length != doses.length) {
            throw given.refuse("responses", "as many numbers as doses has (" + doses.length + ")");
        }
        double[] above = Arrays.stream(doses)
                .filter(dose -> dose > 0)
                .distinct()
                .sorted()
                .toArray();
        if (doses.length <= PARAMETERS || Arrays.stream(doses).distinct().count() < PARAMETERS) {
            throw given.refuse("doses", "five numbers or more, at four or more different doses");
        }
        if (Asked.isRounding(Math.sqrt(Asked.squares(responses, Asked.mean(responses))), Asked.largest(responses))) {
            throw given.refuse("responses", "responses that differ");
        }
        LogLogistic fit = LogLogistic.fit(doses, responses)
                .filter(curve -> curve.slope() > 0 && curve.lower() < curve.upper())
                .orElseThrow(() ->
                        given.refuse("responses", "responses that fall as the dose rises; no such curve fits these"));
        if (fit.ed50() < above[0] / 10 || fit.ed50() > above[above.length - 1] * 10) {
            throw given.refuse("doses", "doses around the middle of the curve; these miss it by ten times or more");
        }
        int df = doses.length - PARAMETERS;
        double squares = working.step(
                "squares around the curve", "least sum of (response − curve)²", fit.squares(doses, responses), "");
        double spread = working.line("spread around the curve", Math.sqrt(squares / df), "", "√({} ÷ {})", squares, df);
        double[] errors = fit.standardErrors(doses, responses, spread)
                .orElseThrow(() -> given.refuse(
                        "responses", "responses that fix all four numbers of the curve; these leave one open"));
        double b = working.line("slope", fit.slope(), "", "at the least sum of squares, give or take {}", errors[0]);
        double c =
                working.line("lower limit", fit.lower(), "", "at the least sum of squares, give or take {}", errors[1]);
        double d =
                working.line("upper limit", fit.upper(), "", "at the least sum of squares, give or take {}", errors[2]);
        double e =
                working.line("dose halfway", fit.ed50(), "", "at the least sum of squares, give or take {}", errors[3]);
        double ed10 =
                working.line("dose for a tenth of the way", fit.effectiveDose(10), "", "{} × (10 ÷ 90)^(1 ÷ {})", e, b);
        double ed90 = working.line(
                "dose for nine tenths of the way", fit.effectiveDose(90), "", "{} × (90 ÷ 10)^(1 ÷ {})", e, b);
        return new Outputs()
                .put("slope_b", b)
                .put("lower_c", c)
                .put("upper_d", d)
                .put("ed50_e", e)
                .put("residual_se", spread)
                .put("slope_b_se", errors[0])
                .put("lower_c_se", errors[1])
                .put("upper_d_se", errors[2])
                .put("ed50_e_se", errors[3])
                .put("ed10", ed10)
                .put("ed90", ed90);
    }
}
