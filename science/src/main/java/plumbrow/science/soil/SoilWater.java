package plumbrow.science.soil;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How far the root zone is from full, day by day.
 *
 *   D_i = D_{i−1} − P − I + ET, held to 0 ≤ D ≤ TAW; what passes 0 drains;  TAW = 1000·(θ_FC − θ_WP)·Z [mm]
 *
 *   P, I, ET  rain, irrigation, water used [mm];  θ  water content [-];  Z  depth of the roots [m]
 *
 * Source: FAO-56 chapter 8 (form from memory).
 */
public final class SoilWater {
    public static final Figure FIGURE = Figure.declare("soil-water-balance", Subject.SOIL)
            .question("How far is the root zone from full, day by day?")
            .input(list("rain_mm", "Rain and irrigation of each day", "mm", Range.closed(0, 1000), "0,12,0"))
            .input(list("use_mm", "Water that crop and soil use each day", "mm", Range.closed(0, 30), "5,4,6"))
            .input(number(
                    "field_capacity", "Water at field capacity, share of the volume", "", Range.above(0, 1), "0.30"))
            .input(number(
                    "wilting_point", "Water at wilting point, share of the volume", "", Range.below(0, 1), "0.15"))
            .input(number("root_m", "Depth of the roots", "m", Range.above(0, 5), "1"))
            .input(number("start_mm", "Missing from full to begin with", "mm", Range.NOT_NEGATIVE, "20")
                    .orElse("0"))
            .output("missing_mm", "Missing from full after the last day", "mm")
            .output("drained_mm", "Drained below the roots", "mm")
            .output("holds_mm", "Most the root zone can give", "mm")
            .output("days_mm", "Missing after each day", "mm")
            .formula(
                    "missing = missing before − rain + use, held to 0 and to 1000 × (field capacity − wilting point) × depth")
            .source("[fao-56], chapter 8", MEMORY)
            .validity(
                    "No runoff and no rise from below. Use is not cut when the soil dries: the answer is the careful side.")
            .example(
                    "rain_mm=0,12,0 use_mm=5,4,6 field_capacity=.30 wilting_point=.15 root_m=1 start_mm=20",
                    "missing_mm=23 drained_mm=0 holds_mm=150 days_mm=25,17,23",
                    "20 + 5, − 12 + 4, + 6 by hand",
                    COMPUTED)
            .example(
                    "rain_mm=30 use_mm=5 field_capacity=.30 wilting_point=.15 root_m=1 start_mm=20",
                    "missing_mm=0 drained_mm=5",
                    "20 − 30 + 5 by hand",
                    COMPUTED)
            .model(SoilWater::solve);

    private SoilWater() {}

    private static Outputs solve(Given given, Working working) {
        double[] rain = given.list("rain_mm");
        double[] use = given.list("use_mm");
        if (rain.length != use.length) {
            throw given.refuse("use_mm", "as many days as rain_mm (" + rain.length + ")");
        }
        double full = given.number("field_capacity");
        double dry = given.number("wilting_point");
        if (dry >= full) {
            throw given.refuse("wilting_point", "a share below field_capacity (" + Numbers.plain(full) + ")");
        }
        double roots = given.number("root_m");
        double holds = working.line(
                "most the root zone can give",
                1000 * (full - dry) * roots,
                "",
                "1000 × ({} − {}) × {}",
                full,
                dry,
                roots);
        double missing = given.number("start_mm");
        if (missing > holds) {
            throw given.refuse("start_mm", "not more than the root zone holds (" + Numbers.plain(holds) + " mm)");
        }
        double drained = 0;
        double[] days = new double[rain.length];
        for (int i = 0; i < rain.length; i++) {
            double next = missing - rain[i] + use[i];
            drained += Math.max(-next, 0);
            double held = Math.min(Math.max(next, 0), holds);
            if (i == rain.length - 1) {
                working.line("last day, before it is held", next, "", "{} − {} + {}", missing, rain[i], use[i]);
            }
            missing = held;
            days[i] = held;
        }
        return new Outputs()
                .put("missing_mm", missing)
                .put("drained_mm", drained)
                .put("holds_mm", holds)
                .put("days_mm", days);
    }
}
