package plumbrow.science.soil;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
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
 * Whether rain and irrigation have put a soil herbicide to work.
 *
 *   activated on the day on which rain + irrigation since the application reach the need, if within the window
 *
 * Source: Purdue Pest & Crop, Residual Herbicides: Precipitation Requirements (0.5 in within 7 to 10 days); Clemson, 11 June
 * 2021, Table 1 (by active ingredient; of a range the upper end).
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
            .source("[rain-purdue]; [rain-clemson-2021]", VERIFIED)
            .validity(
                    "From the hour of application, not before. Of a printed range the upper end is taken. The label's words go before.")
            .caution(
                    "Weeds up before the rain are not controlled. A light cultivation kills them; it rarely activates.")
            .example(
                    "rain_in=0,0.1,0,0.3,0.2 active=pyroxasulfone",
                    "state=activated fallen_in=.6 needed_in=.5 day=5",
                    "[rain-clemson-2021]",
                    VERIFIED)
            .example(
                    "rain_in=0,0.1,0.1 active=flumioxazin",
                    "state=waiting needed_in=.25 fallen_in=.2",
                    "[rain-clemson-2021]",
                    VERIFIED)
            .example(
                    "rain_in=0,0,0,0,0,0,0,0,1 active=pendimethalin",
                    "state=activated late needed_in=.75 day=9",
                    "Purdue: after 7 days",
                    COMPUTED)
            .example("rain_in=0,0,0,0,0,0,0,.2 active=default", "state=late needed_in=.5", "Purdue", COMPUTED)
            .model(Activation::solve);

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
}
