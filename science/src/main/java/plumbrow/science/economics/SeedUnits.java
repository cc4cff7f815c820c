package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Bags to order for a number of acres.
 *
 *   units = acres × seeds per acre / seeds per unit, rounded up
 */
public final class SeedUnits {
    public static final Figure FIGURE = Figure.declare("seed-units", Subject.ECONOMICS)
            .question("How many bags of seed do these acres need?")
            .alsoAsked("How many bags do I buy?")
            .input(number("acres", "Acres to plant", "ac", Range.POSITIVE, "32"))
            .input(number("seeds_ac", "Seeds dropped per acre", "seeds/ac", Range.POSITIVE, "32000"))
            .input(number("seeds_per_unit", "Seeds in a bag or unit", "seeds/unit", Range.POSITIVE, "80000")
                    .orElse("80000"))
            .output("units_exact", "Units planted", "units")
            .output("units", "Units to order", "units")
            .formula("units = acres × seeds per acre ÷ seeds per unit, rounded up")
            .source("Arithmetic; 80,000 kernels in a bag of corn", PRACTICE)
            .validity("Every number above 0. Overlap, replanting and what stays in the planter are not in it.")
            .example("acres=32 seeds_ac=32000", "units_exact=12.80 units=13.0", "refuge of 32 ac", COMPUTED)
            .example("acres=128 seeds_ac=32000", "units_exact=51.20 units=52.0", "independent arithmetic", COMPUTED)
            .example("acres=160 seeds_ac=34000", "units_exact=68.00 units=68.0", "blend", COMPUTED)
            .model(SeedUnits::solve);

    private SeedUnits() {}

    private static Outputs solve(Given given, Working working) {
        double acres = given.number("acres");
        double seeds = given.number("seeds_ac");
        double perUnit = given.number("seeds_per_unit");
        double exact = working.line(
                "units planted",
                acres * seeds / perUnit,
                "units",
                "{} ac × {} seeds/ac ÷ {} seeds/unit",
                acres,
                seeds,
                perUnit);
        return new Outputs()
                .put("units_exact", exact)
                .put(
                        "units",
                        working.line("units to order", Numbers.wholeUp(exact), "units", "{} units, rounded up", exact));
    }
}
