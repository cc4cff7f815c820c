package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The amount a measuring tool can show, what that does to the rate, and the acres a leftover in the tank still covers.
 *
 *   measured = amount rounded to the tool's mark, down where up would pass the label's most;  error = measured/amount − 1
 *   acres = leftover/GPA
 *
 * A rate is never rounded up past the label.
 *
 * Source: arithmetic; common practice.
 */
public final class MeasuredAmount {
    public static final Figure FIGURE = Figure.declare("measured-amount", Subject.SPRAYING)
            .question("Which amount does the measuring tool show, and what does that do to the rate?")
            .input(number("amount", "Amount for the load, any unit", "", Range.POSITIVE, "117.3"))
            .input(number("mark", "Smallest mark of the tool, same unit", "", Range.POSITIVE, "1"))
            .input(number("rate", "Rate the amount is for", "", Range.POSITIVE, "32"))
            .input(number("most_rate", "Most the label allows, same unit", "", Range.POSITIVE, "32"))
            .output("measured", "Amount to measure", "")
            .output("error_pct", "Off the rate", "%")
            .output("rate_given", "Rate that goes on", "")
            .formula(
                    "measured = amount to the nearest mark, down where up would pass the label; rate given = rate × measured ÷ amount")
            .source("Common practice", PRACTICE)
            .validity("Amount and mark in one unit, both rates in one unit.")
            .caution(
                    "A mark that is coarse for a small amount gives a poor rate: take a finer tool or mix a larger load.")
            .example(
                    "amount=117.3 mark=1 rate=32 most_rate=32",
                    "measured=117 error_pct=-.256 rate_given=31.918",
                    "last load of 137 ac at 15 gal/ac from 1000 gal, by hand",
                    COMPUTED)
            .example(
                    "amount=10.6 mark=1 rate=32 most_rate=32",
                    "measured=10 error_pct=-5.66",
                    "not up to 11: that is above the label",
                    COMPUTED)
            .example(
                    "amount=10.6 mark=1 rate=28 most_rate=32",
                    "measured=11 rate_given=29.057",
                    "up, below the label",
                    COMPUTED)
            .model(MeasuredAmount::solve);

    public static final Figure LEFTOVER = Figure.declare("leftover-acres", Subject.SPRAYING)
            .question("How many acres does the spray left in the tank still cover?")
            .input(number("left_gal", "Spray left in tank and lines", "gal", Range.NOT_NEGATIVE, "12"))
            .input(Asked.VOLUME)
            .output("acres", "Acres it covers", "ac")
            .formula("acres = gallons left ÷ gallons an acre")
            .source("Arithmetic", PRACTICE)
            .validity("On a site of the label that has not had its most yet, at the same rate.")
            .caution("Spraying ground twice may pass the label's rate: plan the last load to nothing.")
            .example("left_gal=12 gpa=15", "acres=.8", "by hand", COMPUTED)
            .example("left_gal=55 gpa=15", "acres=3.67", "last load of 137 ac at 15 gal/ac from 1000 gal", COMPUTED)
            .model(MeasuredAmount::solveLeftover);

    private MeasuredAmount() {}

    /**
     * Marks of the tool nearest to an amount that keep its rate within the label: down where up would pass the most, up where down
     * would fall short of the least.
     *
     * @param amount for the load, more than 0; {@code mark} of the tool in the same unit
     * @param rate that the amount is for, {@code least} and {@code most} allowed, in one unit
     * @return whole marks, 0 where the amount is less than the tool can show; NaN where no mark keeps the rate within the label
     */
    public static double marks(double amount, double mark, double rate, double least, double most) {
        double exact = amount / mark;
        double nearest = Math.rint(exact);
        double above = Math.floor(exact);
        if (exceeds(rate * nearest / exact, most)) {
            nearest = above;
        } else if (exceeds(least, rate * nearest / exact)) {
            nearest = Math.ceil(exact);
        }
        double given = rate * nearest / exact;
        return exceeds(given, most) || exceeds(least, given) ? Double.NaN : nearest;
    }

    private static boolean exceeds(double value, double limit) {
        return value > limit * (1 + ROUNDING);
    }

    private static final double ROUNDING = 1e-12;

    private static Outputs solve(Given given, Working working) {
        double amount = given.number("amount");
        double mark = given.number("mark");
        double rate = given.number("rate");
        double most = given.number("most_rate");
        if (rate > most) {
            throw given.refuse("rate", "a rate not above most_rate, the most the label allows");
        }
        working.line("marks of the tool", amount / mark, "", "{} ÷ {}", amount, mark);
        double whole = marks(amount, mark, rate, 0, most);
        if (!(whole > 0)) {
            throw given.refuse("mark", "a finer mark: this amount is less than the tool can show");
        }
        double measured = working.line("amount to measure", whole * mark, "", "{} × {}", whole, mark);
        double applied =
                working.line("rate that goes on", rate * measured / amount, "", "{} × {} ÷ {}", rate, measured, amount);
        double off = working.line(
                "off the rate", 100 * (measured / amount - 1), "%", "100 × ({} ÷ {} − 1)", measured, amount);
        return new Outputs().put("measured", measured).put("error_pct", off).put("rate_given", applied);
    }

    private static Outputs solveLeftover(Given given, Working working) {
        double left = given.number("left_gal");
        double volume = given.number("gpa");
        return new Outputs().put("acres", working.line("acres", left / volume, "", "{} ÷ {}", left, volume));
    }
}
