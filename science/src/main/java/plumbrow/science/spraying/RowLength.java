package plumbrow.science.spraying;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Feet of row on an acre and on a thousandth of it, where plants are counted.
 *
 *   F = 43,560·12/R = 522,720/R      [ft/ac];  R  row spacing [in], > 0
 *
 * Source: arithmetic; thousandth-acre lengths: University of Tennessee, news.utcrops.com, April 2011.
 */
public final class RowLength {
    private static final double FT2_PER_ACRE = 43_560;
    private static final double INCHES_PER_FOOT = 12;

    public static final Figure FIGURE = Figure.declare("row-length", Subject.SPRAYING)
            .question("How many feet of row are a thousandth of an acre?")
            .input(Asked.ROW_SPACING)
            .output("ft_per_thousandth_acre", "Row for a stand count", "ft")
            .output("row_ft_ac", "Row on an acre", "ft/ac")
            .output("tape", "On the tape", "")
            .formula("feet on an acre = 43,560 × 12 ÷ row spacing")
            .source("[tennessee-rows-2011]", VERIFIED)
            .validity("Even rows; twin rows count as one of their spacing.")
            .example("row_spacing_in=15", "tape=34 ft 10 in row_ft_ac=34848", "[tennessee-rows-2011]", VERIFIED)
            .example("row_spacing_in=20", "tape=26 ft 2 in row_ft_ac=26136", "[tennessee-rows-2011]", VERIFIED)
            .example(
                    "row_spacing_in=30",
                    "tape=17 ft 5 in row_ft_ac=17424 ft_per_thousandth_acre=17.424",
                    "[tennessee-rows-2011]",
                    VERIFIED)
            .example("row_spacing_in=36", "tape=14 ft 6 in row_ft_ac=14520", "[tennessee-rows-2011]", VERIFIED)
            .example("row_spacing_in=38", "tape=13 ft 9 in row_ft_ac=13756", "[tennessee-rows-2011]", VERIFIED)
            .example("row_spacing_in=22", "row_ft_ac=23760", "independent arithmetic", COMPUTED)
            .example("row_spacing_in=40", "row_ft_ac=13068", "independent arithmetic", COMPUTED)
            .model(RowLength::solve);

    private RowLength() {}

    /** Row on an acre [ft/ac] at a row spacing [in]. */
    public static double feetPerAcre(double rowSpacingInches) {
        return FT2_PER_ACRE * INCHES_PER_FOOT / rowSpacingInches;
    }

    static double showFeetPerAcre(Working working, double spacing) {
        return working.line("row on an acre", feetPerAcre(spacing), "ft/ac", "43,560 × 12 ÷ {} in", spacing);
    }

    private static Outputs solve(Given given, Working working) {
        double feet = showFeetPerAcre(working, given.number("row_spacing_in"));
        double count = working.line("a thousandth of it", feet / 1000, "ft", "{} ÷ 1000", feet);
        return new Outputs()
                .put("ft_per_thousandth_acre", count)
                .put("row_ft_ac", feet)
                .put("tape", onTape(count));
    }

    private static String onTape(double feet) {
        double inches = Math.rint(feet * INCHES_PER_FOOT);
        return "%.0f ft %.0f in".formatted(Math.floor(inches / INCHES_PER_FOOT), inches % INCHES_PER_FOOT);
    }
}
