package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** What is left of a soil-applied herbicide after some days, as a figure. The distribution is {@link ResidualHerbicide}. */
public final class ResidualLeft {
    static final Input RATE = number("rate", "Rate applied, in any unit", "", Range.POSITIVE, "1400");
    static final Input DT50 = number("dt50_d", "Time in which half is gone", "d", Range.POSITIVE, "20");
    static final Input DAYS = number("days", "Days since application", "d", Range.closed(0, 3650), "28");
    static final Input LOST = number(
                    "lost_share", "Share lost before rain or incorporation", "", Range.below(0, 1), "0.4")
            .orElse("0");

    public static final Figure FIGURE = Figure.declare("residual-left", Subject.WEEDS)
            .question("How much of the soil herbicide is left?")
            .alsoAsked("How much residual is left?")
            .input(RATE)
            .input(DT50)
            .input(DAYS)
            .input(LOST)
            .output("left", "Left, in the unit of the rate", "")
            .output("left_pct", "Left, of the rate", "%")
            .formula("left = rate × (1 − share lost) × 2^(−days ÷ DT50)")
            .source("First-order loss", MEMORY)
            .validity(
                    "One loss rate throughout; cold or dry soil is slower, so DT50 is that of the field, not of the laboratory.")
            .example("rate=1400 dt50_d=20 days=28", "left=530.501", "independent arithmetic", COMPUTED)
            .example("rate=1400 dt50_d=20 days=28 lost_share=.5", "left=265.250", "independent arithmetic", COMPUTED)
            .model(ResidualLeft::solve);

    private ResidualLeft() {}

    static double showLeft(Given given, Working working) {
        double rate = given.number("rate");
        double lost = given.number("lost_share");
        double half = given.number("dt50_d");
        double days = given.number("days");
        return working.line(
                "left",
                ResidualHerbicide.left(rate, lost, half, days),
                "",
                "{} × (1 − {}) × 2^(−{} ÷ {})",
                rate,
                lost,
                days,
                half);
    }

    private static Outputs solve(Given given, Working working) {
        double left = showLeft(given, working);
        double rate = given.number("rate");
        return new Outputs()
                .put("left", left)
                .put(
                        "left_pct",
                        working.line("left of the rate", 100 * (left / rate), "%", "100 × {} ÷ {}", left, rate));
    }
}
