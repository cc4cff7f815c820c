package plumbrow.science.insects;

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
 * How many days sooner or later than a place with a printed date another place is free of the Hessian fly.
 *
 *   sooner [d] = 4·(degrees farther north) + (feet higher)/100
 *
 * Only to put fields in order where no table is at hand; the local table gives the date.
 *
 * Source: Hopkins' rule of latitude and height, as an encyclopedia quotes it.
 */
public final class HessianFly {
    private static final double DAYS_PER_DEGREE = 4;
    private static final double FEET_PER_DAY = 100;

    public static final Figure FIGURE = Figure.declare("fly-free-shift", Subject.INSECTS)
            .question("How much sooner may wheat be sown here than where the fly-free date is known?")
            .input(number("known_latitude", "Latitude of the place with a date", "°", Range.closed(25, 55), "40.0"))
            .input(number("latitude", "Latitude here", "°", Range.closed(25, 55), "40.5"))
            .input(number("higher_ft", "Feet higher here; lower is negative", "ft", Range.closed(-6000, 6000), "200")
                    .orElse("0"))
            .output("days_sooner", "Days sooner; later is negative", "d")
            .formula("days sooner = 4 × degrees farther north + feet higher ÷ 100")
            .source("Rule of [hopkins-1918], as an encyclopedia quotes it", VERIFIED)
            .validity("Two degrees or so around a place with a printed date.")
            .caution(
                    "Puts fields in order only. The fly-free date of your county is in your state's table: sow by that.")
            .example(
                    "known_latitude=40 latitude=40.5 higher_ft=200", "days_sooner=4.0", "4 × 0.5 + 2 by hand", COMPUTED)
            .example(
                    "known_latitude=41 latitude=38.5",
                    "days_sooner=-10",
                    "by hand; Ohio's tables span 12 to 13 days",
                    COMPUTED)
            .model(HessianFly::solve);

    private HessianFly() {}

    private static Outputs solve(Given given, Working working) {
        double known = given.number("known_latitude");
        double here = given.number("latitude");
        double higher = given.number("higher_ft");
        double days = working.line(
                "days sooner",
                DAYS_PER_DEGREE * (here - known) + higher / FEET_PER_DAY,
                "d",
                "{} × ({} − {}) + {} ÷ {}",
                DAYS_PER_DEGREE,
                here,
                known,
                higher,
                FEET_PER_DAY);
        return new Outputs().put("days_sooner", days);
    }
}
