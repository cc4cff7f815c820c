package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * High-end concentration in shallow ground water under vulnerable sand.
 *
 *   RILP = log10(t½ − 5)·(4 − log10(Koc + 5));  C = rate·10^(0.610·RILP − 2.241)      [µg/L]
 *   t½ ≤ 5 or RILP ≤ 0: C = 0.006·rate
 *
 *   t½  aerobic laboratory half-life [d];  Koc  [mL/g];  rate  [lb/ac in a year]
 *
 * A screen of 1997 that EPA replaced by a process model in 2012.
 *
 * Source: Barrett 1997, EPA/OPP (equation from memory; purpose and limits: archive.epa.gov).
 */
public final class GroundwaterScreen {
    private static final double FLOOR = 0.006;

    public static final Figure FIGURE = Figure.declare("groundwater-screen", Subject.FATE)
            .question("How strong could shallow ground water under sand become?")
            .input(Asked.HALF_LIFE)
            .input(Asked.KOC)
            .input(number("rate_lb_ac", "Active ingredient in a year", "lb/ac", Range.NOT_NEGATIVE, "2"))
            .output("concentration_ug_l", "Concentration", "µg/L")
            .sometimes("rilp", "Relative index of leaching", "")
            .formula(
                    "index = log10(half-life − 5) × (4 − log10(Koc + 5)); concentration = rate × 10^(0.61 × index − 2.241)")
            .source("[barrett-1997]", MEMORY)
            .validity(
                    "Half-life up to 5 d, or an index of 0 and less: 0.006 × rate. Shallow water, sand, high end: no regional estimate.")
            .caution(Asked.SCREEN)
            .example(
                    "half_life_d=146 koc_ml_g=88 rate_lb_ac=2",
                    "rilp=4.366175 concentration_ug_l=5.28928",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "half_life_d=520 koc_ml_g=178 rate_lb_ac=.5",
                    "rilp=4.711898 concentration_ug_l=2.14896",
                    "EPA printed 2.09 from its own inputs (memory)",
                    COMPUTED)
            .example(
                    "half_life_d=60 koc_ml_g=100 rate_lb_ac=1",
                    "concentration_ug_l=0.724014",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "half_life_d=30 koc_ml_g=6070 rate_lb_ac=1",
                    "concentration_ug_l=0.00878172",
                    "independent arithmetic",
                    COMPUTED)
            .model(GroundwaterScreen::solve);

    private GroundwaterScreen() {}

    private static Outputs solve(Given given, Working working) {
        double halfLife = given.number("half_life_d");
        double koc = given.number("koc_ml_g");
        double rate = given.number("rate_lb_ac");
        if (halfLife <= 5) {
            return new Outputs().put("concentration_ug_l", showFloor(working, rate));
        }
        double index = working.line(
                "index",
                Math.log10(halfLife - 5) * (4 - Math.log10(koc + 5)),
                "",
                "log10({} − 5) × (4 − log10({} + 5))",
                halfLife,
                koc);
        if (index <= 0) {
            return new Outputs()
                    .put("concentration_ug_l", showFloor(working, rate))
                    .put("rilp", index);
        }
        double concentration = working.line(
                "concentration",
                rate * Math.pow(10, 0.610 * index - 2.241),
                "µg/L",
                "{} lb/ac × 10^(0.61 × {} − 2.241)",
                rate,
                index);
        return new Outputs().put("concentration_ug_l", concentration).put("rilp", index);
    }

    private static double showFloor(Working working, double rate) {
        return working.line("concentration, floor", FLOOR * rate, "µg/L", "0.006 × {}", rate);
    }
}
