package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The year of the corn borer with two generations, by degree days of base 50 °F (86/50) from 1 January.
 *
 * Windows of treatment: first generation 800 to 1000, second 1550 to 2100. From egg hatch to the third instar, which bores
 * into the stalk, 225 degree days pass: days = 225/degree days a day. Not for the northern strain of one generation.
 *
 * Source: agweather.cals.wisc.edu/thermal-models/ecb; ipm.iastate.edu ecbgrowth (225).
 */
public final class BorerCalendar {
    private static final double HATCH_TO_BORING_DD = 225;

    /** What comes next, and when [DD °F]. */
    private enum Event {
        FIRST_MOTH(374, "first spring moth"),
        FIRST_EGGS(450, "first eggs of the first generation"),
        PEAK_MOTHS(631, "peak of the spring moths"),
        FIRST_OPENS(800, "window against the first generation opens"),
        FIRST_CLOSES(1000, "window against the first generation closes"),
        SECOND_MOTH(1400, "first moth of the second flight"),
        SECOND_EGGS(1450, "first eggs of the second generation"),
        SECOND_OPENS(1550, "second generation hatches, its window opens"),
        SECOND_PEAK(1733, "peak of the second flight"),
        SECOND_CLOSES(2100, "window against the second generation closes");

        private final double degreeDays;
        private final String words;

        Event(double degreeDays, String words) {
            this.degreeDays = degreeDays;
            this.words = words;
        }
    }

    public static final Figure CALENDAR = Figure.declare("corn-borer-calendar", Subject.INSECTS)
            .question("What do the corn borers do next, and can they still be reached?")
            .input(number("degree_days", "Degree days from 1 January, 86/50", "DD °F", Range.closed(0, 6000), "850"))
            .output("window", "Window of treatment", "")
            .sometimes("next", "Next", "")
            .sometimes("to_next", "Degree days until then", "DD °F")
            .formula("table of events by degree days; first generation 800 to 1000, second 1550 to 2100")
            .source("[wisconsin-borer]", VERIFIED)
            .validity("Two generations, 86/50 rule, from 1 January. Not for the northern strain of one generation.")
            .caution("A sum only says when to look: borers already in the stalk are out of reach.")
            .example(
                    "degree_days=850",
                    "window=first generation to_next=150",
                    "[wisconsin-borer]: 800 to 1000",
                    VERIFIED)
            .example(
                    "degree_days=300",
                    "window=none next=first spring moth to_next=74",
                    "[wisconsin-borer]: 374",
                    VERIFIED)
            .example(
                    "degree_days=1550",
                    "window=second generation next=peak of the second flight",
                    "[wisconsin-borer]",
                    VERIFIED)
            .example("degree_days=2200", "window=none", "[wisconsin-borer]: past 2100", VERIFIED)
            .model(BorerCalendar::solveCalendar);

    public static final Figure GROWTH = Figure.declare("corn-borer-growth", Subject.INSECTS)
            .question("In how many days do hatched corn borers bore into the stalk?")
            .input(number("tmin_f", "Lowest temperature of a day", "°F", Range.closed(-60, 130), "60"))
            .input(number("tmax_f", "Highest temperature of a day", "°F", Range.closed(-60, 130), "85"))
            .output("dd_day", "Degree days a day, 86/50", "DD °F")
            .output("days", "From hatch to the third instar", "d")
            .formula("days = 225 ÷ degree days a day by the 86/50 rule")
            .source("[iowa-borer-growth]", VERIFIED)
            .validity("Days alike. Refused where a day brings no heat. Lowest not above highest.")
            .example("tmin_f=60 tmax_f=85", "dd_day=22.5 days=10", "[iowa-borer-growth]", VERIFIED)
            .example("tmin_f=50 tmax_f=70", "dd_day=10.0 days=22.5", "by hand", COMPUTED)
            .model(BorerCalendar::solveGrowth);

    private BorerCalendar() {}

    /** All that happens in its year, in order. */
    static List<HeatCalendar.Event> events() {
        return Arrays.stream(Event.values())
                .map(event -> new HeatCalendar.Event(event.words, event.degreeDays))
                .toList();
    }

    private static Outputs solveCalendar(Given given, Working working) {
        double sum = given.number("degree_days");
        Outputs outputs = new Outputs().put("window", window(sum));
        for (Event event : Event.values()) {
            if (event.degreeDays > sum) {
                double rest = working.line(
                        "until: " + event.words, event.degreeDays - sum, "DD °F", "{} − {}", event.degreeDays, sum);
                return outputs.put("next", event.words).put("to_next", rest);
            }
        }
        working.line(
                "past the last window",
                sum - Event.SECOND_CLOSES.degreeDays,
                "DD °F",
                "{} − {}",
                sum,
                Event.SECOND_CLOSES.degreeDays);
        return outputs;
    }

    private static String window(double sum) {
        if (sum >= Event.FIRST_OPENS.degreeDays && sum <= Event.FIRST_CLOSES.degreeDays) {
            return "first generation";
        }
        boolean second = sum >= Event.SECOND_OPENS.degreeDays && sum <= Event.SECOND_CLOSES.degreeDays;
        return second ? "second generation" : "none";
    }

    private static Outputs solveGrowth(Given given, Working working) {
        double min = given.number("tmin_f");
        double max = given.number("tmax_f");
        if (min > max) {
            throw given.refuse("tmin_f", "a number not above tmax_f");
        }
        double low = Math.min(Math.max(min, 50), 86);
        double high = Math.min(Math.max(max, 50), 86);
        double day = working.line("degree days a day", (low + high) / 2 - 50, "DD °F", "({} + {}) ÷ 2 − 50", low, high);
        if (day <= 0) {
            throw given.refuse("tmax_f", "a day above 50 °F: below it the borers do not grow");
        }
        return new Outputs()
                .put("dd_day", day)
                .put("days", working.line("days", HATCH_TO_BORING_DD / day, "d", "{} ÷ {}", HATCH_TO_BORING_DD, day));
    }
}
