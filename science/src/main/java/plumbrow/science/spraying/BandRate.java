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
 * What a band takes of a broadcast rate, and liquid in the furrow along the row.
 *
 *   per field acre = rate·band/row spacing;  fl oz per 1000 ft = GPA·128,000/F, F {@link RowLength}
 *
 * Inside the band the rate is the broadcast rate. Say of every rate whether it is per treated or per field acre.
 *
 * Source: Hofman, NDSU AE-1042.
 */
public final class BandRate {
    public static final Figure FIGURE = Figure.declare("band-rate", Subject.SPRAYING)
            .question("How much does a band take on an acre of field?")
            .input(number("rate", "Rate on the treated acre, in any unit", "", Range.NOT_NEGATIVE, "20"))
            .input(number("band_in", "Width of the band", "in", Range.POSITIVE, "15"))
            .input(Asked.ROW_SPACING)
            .output("field_rate", "On an acre of field, in the unit given", "")
            .formula("field rate = rate × band ÷ row spacing")
            .source("[hofman-ae1042]", VERIFIED)
            .validity("Band not wider than the row spacing.")
            .caution("Read whether the label's rate is per treated or per field acre.")
            .example(
                    "rate=20 band_in=15 row_spacing_in=30", "field_rate=10.00", "independent arithmetic, gal", COMPUTED)
            .example("rate=40 band_in=7 row_spacing_in=38", "field_rate=7.37", "independent arithmetic, lb", COMPUTED)
            .example(
                    "rate=3 band_in=10 row_spacing_in=30",
                    "field_rate=1.00",
                    "lb, worked figure seen second hand",
                    VERIFIED)
            .model(BandRate::solve);

    public static final Figure FURROW = Figure.declare("furrow-liquid", Subject.SPRAYING)
            .question("How much liquid runs along 1000 feet of row?")
            .input(number("gpa", "Volume in the furrow", "gal/ac", Range.NOT_NEGATIVE, "3"))
            .input(Asked.ROW_SPACING)
            .output("oz_per_1000_row_ft", "Along the row", "fl oz/1000 ft")
            .formula("fl oz per 1000 ft = gal/ac × 128,000 ÷ (43,560 × 12 ÷ row spacing)")
            .source("Arithmetic", PRACTICE)
            .validity("Fluid ounces. For the flow of a row's tube use nozzle-flow with the row spacing.")
            .example("gpa=3 row_spacing_in=30", "oz_per_1000_row_ft=22.04", "independent arithmetic", COMPUTED)
            .example("gpa=.3267 row_spacing_in=30", "oz_per_1000_row_ft=2.40", "41.8 fl oz/ac", COMPUTED)
            .model(BandRate::solveFurrow);

    private BandRate() {}

    private static Outputs solve(Given given, Working working) {
        double rate = given.number("rate");
        double band = given.number("band_in");
        double spacing = given.number("row_spacing_in");
        if (band > spacing) {
            throw given.refuse("band_in", "a band not wider than the rows (" + Numbers.plain(spacing) + " in)");
        }
        return new Outputs()
                .put(
                        "field_rate",
                        working.line(
                                "on an acre of field",
                                rate * band / spacing,
                                "",
                                "{} × {} in ÷ {} in",
                                rate,
                                band,
                                spacing));
    }

    private static Outputs solveFurrow(Given given, Working working) {
        double volume = given.number("gpa");
        double feet = RowLength.showFeetPerAcre(working, given.number("row_spacing_in"));
        double ounces = volume * NozzleFlow.OUNCES_PER_GALLON * 1000 / feet;
        return new Outputs()
                .put(
                        "oz_per_1000_row_ft",
                        working.line(
                                "along the row", ounces, "fl oz/1000 ft", "{} gal/ac × 128,000 ÷ {}", volume, feet));
    }
}
