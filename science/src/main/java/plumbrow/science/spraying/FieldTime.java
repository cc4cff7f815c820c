package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Hours that a field takes with filling, and days that a farm takes.
 *
 *   hours = A/(S·W/8.25) + loads·fill + turns;  days = A/(C·hours a day·machines)
 *
 * Source: time elements of ASABE EP496; Iowa State A3-25 for days.
 */
public final class FieldTime {
    private static final double MINUTES_PER_HOUR = 60;

    public static final Figure FIGURE = Figure.declare("field-hours", Subject.SPRAYING)
            .question("How many hours does spraying this field take, with filling?")
            .alsoAsked("How long does it take to spray the field?")
            .input(number("acres", "Acres", "ac", Range.POSITIVE, "160"))
            .input(Asked.SPEED)
            .input(number("width_ft", "Effective width", "ft", Range.POSITIVE, "90"))
            .input(Asked.VOLUME)
            .input(number("tank_gal", "Usable volume of the tank", "gal", Range.POSITIVE, "1200"))
            .input(number("fill_min", "Minutes to fill, drive included", "min", Range.NOT_NEGATIVE, "20"))
            .input(number("turns_min", "Minutes of turns", "min", Range.NOT_NEGATIVE, "0")
                    .orElse("0"))
            .output("hours", "Together", "h")
            .output("spraying_h", "Spraying", "h")
            .output("loads", "Loads", "")
            .output("efficiency", "Field efficiency", "")
            .formula("hours = acres ÷ (mph × feet ÷ 8.25) + loads × fill + turns")
            .source("Time elements, as [asabe-ep496]", PRACTICE)
            .validity("Every started load is filled once.")
            .example(
                    "acres=160 mph=12 width_ft=90 gpa=15 tank_gal=1200 fill_min=20",
                    "hours=1.889 spraying_h=1.222 loads=2.0 efficiency=0.647",
                    "independent arithmetic",
                    COMPUTED)
            .model(FieldTime::solve);

    public static final Figure DAYS = Figure.declare("days-needed", Subject.SPRAYING)
            .question("How many days does the work take?")
            .input(number("acres", "Acres", "ac", Range.POSITIVE, "1600"))
            .input(number("ac_h", "Field capacity", "ac/h", Range.POSITIVE, "17.33"))
            .input(number("hours_day", "Hours in the field on a day", "h", Range.above(0, 24), "12"))
            .input(number("machines", "Machines", "", Range.closed(1, 100), "1").orElse("1"))
            .output("days", "Suitable days needed", "d")
            .formula("days = acres ÷ (ac/h × hours × machines)")
            .source("[iowa-a3-25]", VERIFIED)
            .validity("Suitable days, not calendar days: a spring week of Iowa had 1.8 to 6.2 of them.")
            .example("acres=1600 ac_h=17.33 hours_day=12", "days=7.69", "independent arithmetic", COMPUTED)
            .example(
                    "acres=1600 ac_h=13.77 hours_day=14",
                    "days=8.3",
                    "[iowa-a3-25]: 8.3 days, 192.8 ac/day, 13.8 ac/h",
                    VERIFIED)
            .model(FieldTime::solveDays);

    private FieldTime() {}

    /** Hours that a field takes with filling: acres, mph, effective width [ft], gal/ac, tank [gal], minutes a fill and of turns. */
    public static double hours(
            double acres, double mph, double widthFeet, double gpa, double tankGal, double fillMin, double turnsMin) {
        return acres / FieldCapacity.acresPerHour(mph, widthFeet, 1)
                + (loads(acres, gpa, tankGal) * fillMin + turnsMin) / MINUTES_PER_HOUR;
    }

    private static double loads(double acres, double gpa, double tankGal) {
        return Numbers.wholeUp(acres * gpa / tankGal);
    }

    private static Outputs solve(Given given, Working working) {
        double acres = given.number("acres");
        double speed = given.number("mph");
        double width = given.number("width_ft");
        double volume = given.number("gpa");
        double tank = given.number("tank_gal");
        double fill = given.number("fill_min");
        double turns = given.number("turns_min");
        double most = working.line(
                "never stopping",
                FieldCapacity.acresPerHour(speed, width, 1),
                "ac/h",
                "{} mph × {} ft ÷ 8.25",
                speed,
                width);
        double spraying = working.line("spraying", acres / most, "h", "{} ac ÷ {}", acres, most);
        double loads =
                working.line("loads", loads(acres, volume, tank), "", "{} × {} ÷ {}, rounded up", acres, volume, tank);
        double hours = working.line(
                "together",
                hours(acres, speed, width, volume, tank, fill, turns),
                "h",
                "{} + ({} × {} + {}) ÷ 60",
                spraying,
                loads,
                fill,
                turns);
        return new Outputs()
                .put("hours", hours)
                .put("spraying_h", spraying)
                .put("loads", loads)
                .put("efficiency", working.line("field efficiency", spraying / hours, "", "{} ÷ {}", spraying, hours));
    }

    private static Outputs solveDays(Given given, Working working) {
        double acres = given.number("acres");
        double capacity = given.number("ac_h");
        double hours = given.number("hours_day");
        double machines = Asked.whole(given, "machines");
        return new Outputs()
                .put(
                        "days",
                        working.line(
                                "days",
                                acres / (capacity * hours * machines),
                                "d",
                                "{} ac ÷ ({} × {} × {})",
                                acres,
                                capacity,
                                hours,
                                machines));
    }
}
