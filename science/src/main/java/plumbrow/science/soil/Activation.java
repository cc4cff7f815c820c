package plumbrow.science.soil;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether rain and irrigation have put a soil herbicide to work, and what the soil still holds of water.
 *
 *   activated on the day on which rain + irrigation since the application reach the need, if within the window
 *   D_i = D_{i−1} − P − I + ET, held to 0 ≤ D ≤ TAW; what passes 0 drains;  TAW = 1000·(θ_FC − θ_WP)·Z
 *
 * Source: Purdue Pest & Crop, Residual Herbicides: Precipitation Requirements (0.5 in within 7 to 10 days); Clemson, 11 June
 * 2021, Table 1 (by active ingredient; of a range the upper end); FAO-56 chapter 8 (water balance, from memory).
 */
public final class Activation {
    private static final List<String> ACTIVES = List.of(
            "default",
            "flumioxazin",
            "diclosulam",
            "metolachlor",
            "dimethenamid-p",
            "acetochlor-encapsulated",
            "pyroxasulfone",
            "ethalfluralin",
            "pendimethalin");
    private static final double[] NEEDED_IN = {.5, .25, .5, .5, .5, .5, .5, 1, .75};

    public static final Figure FIGURE = Figure.declare("rain-activation", Subject.SOIL)
            .question("Has rain put the soil herbicide to work?")
            .input(list(
                    "rain_in",
                    "Rain and irrigation of each day since the application",
                    "in",
                    Range.closed(0, 30),
                    "0,0.1,0,0.3,0.2"))
            .input(word("active", "Active ingredient", ACTIVES, "pyroxasulfone").orElse("default"))
            .input(number("window_d", "Days within which it must come", "d", Range.closed(1, 30), "7")
                    .orElse("7"))
            .output("state", "State", "")
            .output("fallen_in", "Fallen so far", "in")
            .output("needed_in", "Needed", "in")
            .sometimes("day", "Day on which the need was met", "d")
            .formula("activated on the day on which the sum reaches the need; late after the window; else waiting")
            .source("Purdue Pest & Crop; Clemson 11 June 2021, Table 1", VERIFIED)
            .validity(
                    "From the hour of application, not before. Of a printed range the upper end is taken. The label's words go before.")
            .caution(
                    "Weeds up before the rain are not controlled. A light cultivation kills them; it rarely activates.")
            .example(
                    "rain_in=0,0.1,0,0.3,0.2 active=pyroxasulfone",
                    "state=activated fallen_in=.6 needed_in=.5 day=5",
                    "Clemson 2021",
                    VERIFIED)
            .example(
                    "rain_in=0,0.1,0.1 active=flumioxazin",
                    "state=waiting needed_in=.25 fallen_in=.2",
                    "Clemson 2021",
                    VERIFIED)
            .example(
                    "rain_in=0,0,0,0,0,0,0,0,1 active=pendimethalin",
                    "state=activated late needed_in=.75 day=9",
                    "Purdue: after 7 days",
                    COMPUTED)
            .example("rain_in=0,0,0,0,0,0,0,.2 active=default", "state=late needed_in=.5", "Purdue", COMPUTED)
            .model(Activation::solve);

    public static final Figure WATER = Figure.declare("soil-water-balance", Subject.SOIL)
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
            .source("FAO-56, chapter 8", MEMORY)
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
            .model(Activation::solveWater);

    private Activation() {}

    private static Outputs solve(Given given, Working working) {
        double[] rain = given.list("rain_in");
        double needed = NEEDED_IN[ACTIVES.indexOf(given.word("active"))];
        double window = given.number("window_d");
        double sum = 0;
        int day = 0;
        for (int i = 0; i < rain.length; i++) {
            sum += rain[i];
            if (day == 0 && sum >= needed - 1e-9) {
                day = i + 1;
            }
        }
        working.step("fallen so far", Numbers.terms(rain), sum, "in");
        Outputs outputs = new Outputs().put("fallen_in", sum).put("needed_in", needed);
        if (day == 0) {
            return outputs.put("state", rain.length > window ? "late" : "waiting");
        }
        return outputs.put("state", day > window ? "activated late" : "activated")
                .put("day", day);
    }

    private static Outputs solveWater(Given given, Working working) {
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
