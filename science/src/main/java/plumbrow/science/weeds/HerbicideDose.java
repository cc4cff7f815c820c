package plumbrow.science.weeds;

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
 * Control by the rate of a herbicide and the height of the weed.
 *
 *   control = 100/(1 + (ED50/R)^b);  ED50(h) = ED50_ref·(h/h_ref)^γ;  ED50 = R·((100 − p)/p)^{1/b} from control p at R
 *
 *   R, ED50  in one unit of rate;  b  slope [-];  h  height, h_ref height for which ED50 holds [same unit]
 *   γ  0.926 to 1.585 for lambsquarters and glyphosate in three of four site-years, 0 in one
 *
 * Control moves with b·ln(rate) in log-odds: half a rate turns 97 % into 85 % where b is 2.5. γ is not always positive.
 *
 * Source: log-logistic, Seefeldt et al. 1995; heights: Sivesind et al. 2011, Weed Technol. 25:44.
 */
public final class HerbicideDose {
    public static final Figure FIGURE = Figure.declare("herbicide-dose", Subject.WEEDS)
            .question("What control does this rate give on weeds of this height?")
            .input(number("rate", "Rate, any unit", "", Range.POSITIVE, "840"))
            .input(number("ed50", "Rate that controls half, at the reference height", "", Range.POSITIVE, "209.131"))
            .input(number("slope", "Slope of control over rate", "", Range.above(0, 20), "2.5"))
            .input(number("height_ratio", "Height over the reference height", "", Range.above(0, 100), "2")
                    .orElse("1"))
            .input(number("gamma", "How the rate needed grows with height", "", Range.closed(-5, 5), "1.2")
                    .orElse("1"))
            .output("control_pct", "Control", "%")
            .output("ed50_here", "Rate that controls half at this height", "")
            .formula("control = 100 ÷ (1 + (ED50 × ratio^γ ÷ rate)^b)")
            .source("Log-logistic response; heights: [sivesind-2011]", VERIFIED)
            .validity("One product on one weed. γ differs by product and can be below 0.")
            .caution(
                    "A rate below the label's lowest is barred where the label says so, and breeds tolerant plants elsewhere.")
            .example("rate=420 ed50=209.131 slope=2.5", "control_pct=85.110", "half rate", COMPUTED)
            .example(
                    "rate=840 ed50=209.131 slope=2.5 height_ratio=1.9",
                    "control_pct=86.663",
                    "full rate on tall plants",
                    COMPUTED)
            .example(
                    "rate=840 ed50=209.131 slope=2.5 height_ratio=2.4",
                    "control_pct=78.371",
                    "full rate on tall plants",
                    COMPUTED)
            .example(
                    "rate=840 ed50=209.131 slope=2.5 height_ratio=3.0",
                    "control_pct=67.471",
                    "full rate on tall plants",
                    COMPUTED)
            .example(
                    "rate=420 ed50=209.131 slope=2.5 height_ratio=2.4",
                    "control_pct=39.045",
                    "half rate on tall plants",
                    COMPUTED)
            .example(
                    "rate=840 ed50=209.131 slope=2.5 height_ratio=1.5 gamma=1.2",
                    "control_pct=90.548",
                    "15 cm",
                    COMPUTED)
            .example(
                    "rate=840 ed50=209.131 slope=2.5 height_ratio=3 gamma=1.2", "control_pct=54.494", "30 cm", COMPUTED)
            .example(
                    "rate=51 ed50=23.4513 slope=2.8282",
                    "control_pct=90.00",
                    "clethodim on volunteer corn, [alms-soybean-2016]",
                    COMPUTED)
            .model(HerbicideDose::solve);

    public static final Figure HALF_DOSE = Figure.declare("half-dose", Subject.WEEDS)
            .question("Which rate controls half of the weeds, from the control seen at one rate?")
            .input(number("rate", "Rate, any unit", "", Range.POSITIVE, "840"))
            .input(number("control_pct", "Control seen at it", "%", Range.open(0, 100), "97"))
            .input(number("slope", "Slope of control over rate", "", Range.above(.05, 20), "2.5"))
            .output("ed50", "Rate that controls half", "")
            .formula("ED50 = rate × ((100 − control) ÷ control)^(1 ÷ b)")
            .source("Log-logistic response, [rstats4ag], solved for ED50", VERIFIED)
            .validity("The slope must be known or assumed: one rate does not fix it.")
            .example("rate=840 control_pct=97 slope=2.5", "ed50=209.131", "independent arithmetic", COMPUTED)
            .example("rate=51 control_pct=90 slope=2.8282", "ed50=23.45", "clethodim on volunteer corn", COMPUTED)
            .model(HerbicideDose::solveHalf);

    private HerbicideDose() {}

    private static Outputs solve(Given given, Working working) {
        double rate = given.number("rate");
        double ratio = given.number("height_ratio");
        double gamma = given.number("gamma");
        double slope = given.number("slope");
        double here = working.line(
                "rate that controls half here",
                given.number("ed50") * Math.pow(ratio, gamma),
                "",
                "{} × {}^{}",
                given.number("ed50"),
                ratio,
                gamma);
        double control = working.line(
                "control",
                ResidualHerbicide.controlPct(rate, here, slope),
                "%",
                "100 ÷ (1 + ({} ÷ {})^{})",
                here,
                rate,
                slope);
        return new Outputs().put("control_pct", control).put("ed50_here", here);
    }

    private static Outputs solveHalf(Given given, Working working) {
        double rate = given.number("rate");
        double control = given.number("control_pct");
        double slope = given.number("slope");
        return new Outputs()
                .put(
                        "ed50",
                        working.line(
                                "rate that controls half",
                                rate * Math.pow((100 - control) / control, 1 / slope),
                                "",
                                "{} × ((100 − {}) ÷ {})^(1 ÷ {})",
                                rate,
                                control,
                                control,
                                slope));
    }
}
