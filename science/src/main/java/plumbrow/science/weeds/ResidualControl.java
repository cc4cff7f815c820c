package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** What a soil-applied herbicide still controls, as a figure. The distribution is {@link ResidualHerbicide}. */
public final class ResidualControl {
    private static final double GOOD_PCT = 80;

    public static final Figure FIGURE = Figure.declare("residual-control", Subject.WEEDS)
            .question("What does the soil herbicide still control, and for how long?")
            .input(ResidualLeft.RATE)
            .input(ResidualLeft.DT50)
            .input(ResidualLeft.DAYS)
            .input(number("ed50", "Dose that controls half, in the unit of the rate", "", Range.POSITIVE, "200"))
            .input(number("slope", "Slope of control over dose", "", Range.above(0, 20), "3"))
            .input(ResidualLeft.LOST)
            .output("control_pct", "Control of what emerges now", "%")
            .output("days_above_80", "Days for which control is 80 % or better", "d")
            .output("left", "Left, in the unit of the rate", "")
            .formula(
                    "control = 100 ÷ (1 + (ED50 ÷ left)^b); days = DT50 × log2(rate × (1 − lost) ÷ (ED50 × 4^(1 ÷ b)))")
            .source("First-order loss; log-logistic response, [seefeldt-1995]", MEMORY)
            .validity(
                    "After rain has activated it, in the soil for which ED50 holds. Weeds that are up are not counted.")
            .caution("A record of control shows only DT50 ÷ slope, not each of the two: one field does not fix both.")
            .caution("This is control of one day's seedlings. A rating counts all that came up: residual-rating.")
            .example(
                    "rate=1400 dt50_d=20 days=0 ed50=200 slope=3",
                    "control_pct=99.71",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=14 ed50=200 slope=3",
                    "control_pct=98.77",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=28 ed50=200 slope=3",
                    "control_pct=94.91 days_above_80=42.8138",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=42 ed50=200 slope=3",
                    "control_pct=81.32",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=56 ed50=200 slope=3",
                    "control_pct=50.38",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=28 ed50=200 slope=3 lost_share=.4",
                    "days_above_80=28.0745",
                    "independent arithmetic",
                    COMPUTED)
            .example("rate=700 dt50_d=20 days=28 ed50=200 slope=3", "days_above_80=22.8138", "half rate", COMPUTED)
            .model(ResidualControl::solve);

    private ResidualControl() {}

    private static Outputs solve(Given given, Working working) {
        double left = ResidualLeft.showLeft(given, working);
        double ed50 = given.number("ed50");
        double slope = given.number("slope");
        double control = left == 0
                ? 0
                : working.line(
                        "control",
                        ResidualHerbicide.controlPct(left, ed50, slope),
                        "%",
                        "100 ÷ (1 + ({} ÷ {})^{})",
                        ed50,
                        left,
                        slope);
        double rate = given.number("rate");
        double lost = given.number("lost_share");
        double half = given.number("dt50_d");
        double days = ResidualHerbicide.daysAbove(GOOD_PCT, rate, lost, half, ed50, slope);
        working.line(
                "days of 80 % or better",
                days,
                "d",
                (days > 0 ? "" : "0, since not above 0 is ") + "{} × ln({} × (1 − {}) ÷ ({} × 4^(1 ÷ {}))) ÷ ln(2)",
                half,
                rate,
                lost,
                ed50,
                slope);
        return new Outputs()
                .put("control_pct", control)
                .put("days_above_80", days)
                .put("left", left);
    }
}
