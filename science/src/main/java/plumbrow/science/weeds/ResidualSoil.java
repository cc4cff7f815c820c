package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What soil, depth and rain do to a soil herbicide, and how many days a loss at the start costs at the end.
 *
 *   ED50 = ED50_ref·(1 + s·(OM − 2 %)), s 0.15 per %;  C in the seed zone ∝ z_ref/z below z_ref (5 cm)
 *   dose at work before full activation = min(1, rain in 7 days/20 mm)
 *   days lost = DT50·log2(1/(1 − v))
 *
 * Source: common practice, after Steckel 2002 (rates rise with organic matter) and Stewart 2012, Am. J. Plant Sci. 3:1193
 * (0 to 17 mm in 7 days gave poor control); the days lost are exact for first-order decay.
 */
public final class ResidualSoil {
    private static final double REFERENCE_ORGANIC_PCT = 2;

    public static final Figure DOSE = Figure.declare("residual-soil-dose", Subject.WEEDS)
            .question("How much of the soil herbicide works here, for this soil, depth and rain?")
            .input(number("rate", "Rate, any unit", "", Range.POSITIVE, "1400"))
            .input(number(
                    "ed50", "Dose that controls half at 2 % organic matter, same unit", "", Range.POSITIVE, "200"))
            .input(number("slope", "Slope of control over dose", "", Range.above(0, 20), "3"))
            .input(number("organic_pct", "Organic matter", "%", Range.closed(0, 20), "4")
                    .orElse("2"))
            .input(number("per_organic", "Rise of that dose per % organic matter", "", Range.closed(0, 1), "0.15")
                    .orElse("0.15"))
            .input(number("depth_cm", "Depth to which it is mixed", "cm", Range.above(0, 50), "5")
                    .orElse("5"))
            .input(number("reference_cm", "Depth that the half dose is known for", "cm", Range.above(0, 50), "5")
                    .orElse("5"))
            .input(number("rain_mm", "Rain in seven days", "mm", Range.closed(0, 1000), "20")
                    .orElse("20"))
            .input(number("rain_needed_mm", "Rain that puts all of it to work", "mm", Range.above(0, 200), "20")
                    .orElse("20"))
            .output("dose", "Dose at work in the seed zone", "")
            .output("ed50_here", "Dose that controls half here", "")
            .output("control_pct", "Control now", "%")
            .formula(
                    "half dose × (1 + 0.15 × (organic matter − 2)); dose = rate × min(1, reference depth ÷ depth) × min(1, rain ÷ 20)")
            .source("After [steckel-2002] and [stewart-2012]; the rules themselves", PRACTICE)
            .validity(
                    "Planning only. Weeds up before the rain are not controlled unless the product also works on leaves.")
            .caution("The label sets the rate by soil; the rain it asks for goes before the 20 mm used here.")
            .example(
                    "rate=1400 ed50=200 slope=3 organic_pct=4",
                    "dose=1400 ed50_here=260 control_pct=99.36",
                    "200 × 1.3, by hand",
                    COMPUTED)
            .example(
                    "rate=1400 ed50=200 slope=3 rain_mm=10",
                    "dose=700 ed50_here=200 control_pct=97.72",
                    "half of the rain, by hand",
                    COMPUTED)
            .example("rate=1400 ed50=200 slope=3 depth_cm=10", "dose=700", "twice the depth, by hand", COMPUTED)
            .model(ResidualSoil::solveDose);

    public static final Figure DAYS_LOST = Figure.declare("residual-days-lost", Subject.WEEDS)
            .question("How many days of control does a loss at the start cost?")
            .input(number("dt50_d", "Half-life in this soil", "d", Range.above(0, 3650), "20"))
            .input(number("lost_share", "Share lost before rain or mixing", "", Range.below(0, 1), "0.4"))
            .output("days_lost", "Days of control lost", "d")
            .formula("days lost = half-life × log2(1 ÷ (1 − lost))")
            .source("Exact for decay of the first order", MEMORY)
            .validity("First-order decay. Halving the rate costs exactly one half-life.")
            .example("dt50_d=20 lost_share=.5", "days_lost=20", "half the rate costs one half-life", COMPUTED)
            .example("dt50_d=20 lost_share=.4", "days_lost=14.7393", "42.8138 − 28.0745", COMPUTED)
            .model(ResidualSoil::solveDaysLost);

    private ResidualSoil() {}

    private static Outputs solveDose(Given given, Working working) {
        double organic = given.number("organic_pct");
        double rise = given.number("per_organic");
        double factor = working.line(
                "half dose here, times",
                1 + rise * (organic - REFERENCE_ORGANIC_PCT),
                "",
                "1 + {} × ({} − 2)",
                rise,
                organic);
        if (factor <= 0) {
            throw given.refuse("per_organic", "a rise that leaves the half dose above 0 at this organic matter");
        }
        double half = working.line(
                "half dose here", given.number("ed50") * factor, "", "{} × {}", given.number("ed50"), factor);
        double depth = Math.min(1, given.number("reference_cm") / given.number("depth_cm"));
        double rain = Math.min(1, given.number("rain_mm") / given.number("rain_needed_mm"));
        double rate = given.number("rate");
        double dose = working.line("dose at work", rate * depth * rain, "", "{} × {} × {}", rate, depth, rain);
        double slope = given.number("slope");
        double control = dose == 0
                ? working.line("control", 0, "%", "none before rain: {}", dose)
                : working.line(
                        "control",
                        ResidualHerbicide.controlPct(dose, half, slope),
                        "%",
                        "100 ÷ (1 + ({} ÷ {})^{})",
                        half,
                        dose,
                        slope);
        if (rain < 1) {
            working.caution("Waiting for rain: " + Numbers.plain(100 * rain) + " % is reckoned to be at work.");
        }
        return new Outputs().put("dose", dose).put("ed50_here", half).put("control_pct", control);
    }

    private static Outputs solveDaysLost(Given given, Working working) {
        double halfLife = given.number("dt50_d");
        double lost = given.number("lost_share");
        return new Outputs()
                .put(
                        "days_lost",
                        working.line(
                                "days lost",
                                halfLife * Math.log(1 / (1 - lost)) / Math.log(2),
                                "d",
                                "{} × log2(1 ÷ (1 − {}))",
                                halfLife,
                                lost));
    }
}
