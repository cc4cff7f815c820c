package plumbrow.science.spraying;

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
 * Granules along the row, as labels print them, in pounds on an acre and back, and what to catch over a course.
 *
 *   lb/ac = oz per 1000 ft·F/16,000;  oz per 1000 ft = lb/ac·16,000/F;  F = 522,720/R  row on an acre [ft]
 *   catch in a band: oz = broadcast lb/ac·course[ft]·band[ft]·16/43,560
 *
 * A label's ceiling in lb/ac may bite before its rate per 1000 ft does on narrow rows: test both.
 *
 * Source: pesticidestewardship.org, calibration of band applicators; University of Missouri G1273.
 */
public final class RowGranules {
    private static final double OUNCES_PER_1000_LB = 16_000;
    private static final double OUNCE_FT2_PER_ACRE = 16.0 / 43_560;
    private static final double INCHES_PER_FOOT = 12;
    private static final String BOTH_LIMITS =
            "A label's ceiling in lb/ac may bite before its rate per 1000 ft on narrow rows: test both.";

    public static final Figure FIGURE = Figure.declare("row-granules", Subject.SPRAYING)
            .question("How many pounds an acre is a rate per 1000 feet of row?")
            .input(number("oz_per_1000_row_ft", "Rate along the row", "oz/1000 ft", Range.NOT_NEGATIVE, "8"))
            .input(Asked.ROW_SPACING)
            .output("lb_ac", "Product on an acre", "lb/ac")
            .formula("lb/ac = oz per 1000 ft × (43,560 × 12 ÷ row spacing) ÷ 16,000")
            .source("Arithmetic; [pesticide-stewardship]", VERIFIED)
            .validity("Ounces of weight. Row spacing more than 0.")
            .caution(BOTH_LIMITS)
            .example("oz_per_1000_row_ft=8 row_spacing_in=15", "lb_ac=17.42", "independent arithmetic", COMPUTED)
            .example("oz_per_1000_row_ft=8 row_spacing_in=20", "lb_ac=13.07", "independent arithmetic", COMPUTED)
            .example("oz_per_1000_row_ft=8 row_spacing_in=22", "lb_ac=11.88", "independent arithmetic", COMPUTED)
            .example("oz_per_1000_row_ft=8 row_spacing_in=30", "lb_ac=8.71", "independent arithmetic", COMPUTED)
            .example("oz_per_1000_row_ft=8 row_spacing_in=36", "lb_ac=7.26", "independent arithmetic", COMPUTED)
            .example("oz_per_1000_row_ft=8 row_spacing_in=38", "lb_ac=6.88", "independent arithmetic", COMPUTED)
            .example("oz_per_1000_row_ft=8 row_spacing_in=40", "lb_ac=6.53", "independent arithmetic", COMPUTED)
            .model(RowGranules::solve);

    public static final Figure PER_ROW = Figure.declare("granules-per-row", Subject.SPRAYING)
            .question("How many ounces per 1000 feet of row are these pounds an acre?")
            .input(number("lb_ac", "Product on an acre", "lb/ac", Range.NOT_NEGATIVE, "6"))
            .input(Asked.ROW_SPACING)
            .output("oz_per_1000_row_ft", "Rate along the row", "oz/1000 ft")
            .formula("oz per 1000 ft = lb/ac × 16,000 ÷ (43,560 × 12 ÷ row spacing)")
            .source("Arithmetic; [pesticide-stewardship]", VERIFIED)
            .validity("Ounces of weight. Row spacing more than 0.")
            .caution(BOTH_LIMITS)
            .example("lb_ac=6 row_spacing_in=15", "oz_per_1000_row_ft=2.75", "independent arithmetic", COMPUTED)
            .example("lb_ac=6 row_spacing_in=22", "oz_per_1000_row_ft=4.04", "independent arithmetic", COMPUTED)
            .example("lb_ac=6 row_spacing_in=30", "oz_per_1000_row_ft=5.51", "independent arithmetic", COMPUTED)
            .example("lb_ac=6 row_spacing_in=36", "oz_per_1000_row_ft=6.61", "independent arithmetic", COMPUTED)
            .example("lb_ac=6 row_spacing_in=38", "oz_per_1000_row_ft=6.98", "independent arithmetic", COMPUTED)
            .example("lb_ac=6 row_spacing_in=40", "oz_per_1000_row_ft=7.35", "independent arithmetic", COMPUTED)
            .model(RowGranules::solvePerRow);

    public static final Figure CATCH = Figure.declare("granule-catch", Subject.SPRAYING)
            .question("How many ounces must one row's tube drop over the course?")
            .input(number("lb_ac", "Rate on the treated area", "lb/ac", Range.NOT_NEGATIVE, "20"))
            .input(number("course_ft", "Length of the course", "ft", Range.POSITIVE, "500"))
            .input(number("band_in", "Width of the band", "in", Range.POSITIVE, "10"))
            .output("oz", "To catch from one row", "oz")
            .formula("oz = lb/ac × course × band in feet × 16 ÷ 43,560")
            .source("[pesticide-stewardship]: 43,560 ÷ 16 = 2722", VERIFIED)
            .validity("Ounces of weight. Good if within 10 % of the label's amount.")
            .example("lb_ac=20 course_ft=500 band_in=10", "oz=3.06", "independent arithmetic", COMPUTED)
            .model(RowGranules::solveCatch);

    private RowGranules() {}

    /** Product on an acre [lb/ac] from ounces of weight along 1000 ft of row. */
    public static double lbPerAcre(double ozPer1000Feet, double rowSpacingInches) {
        return ozPer1000Feet * RowLength.feetPerAcre(rowSpacingInches) / OUNCES_PER_1000_LB;
    }

    /** Ounces of weight along 1000 ft of row from product on an acre [lb/ac]. */
    public static double ozPer1000Feet(double lbPerAcre, double rowSpacingInches) {
        return lbPerAcre * OUNCES_PER_1000_LB / RowLength.feetPerAcre(rowSpacingInches);
    }

    /** Ounces to catch from one row over a course [ft] for a rate on the band [lb/ac]. */
    public static double catchOz(double lbPerAcre, double courseFeet, double bandInches) {
        return lbPerAcre * courseFeet * bandInches / INCHES_PER_FOOT * OUNCE_FT2_PER_ACRE;
    }

    private static Outputs solve(Given given, Working working) {
        double ounces = given.number("oz_per_1000_row_ft");
        double spacing = given.number("row_spacing_in");
        double feet = RowLength.showFeetPerAcre(working, spacing);
        return new Outputs()
                .put(
                        "lb_ac",
                        working.line(
                                "product on an acre",
                                lbPerAcre(ounces, spacing),
                                "lb/ac",
                                "{} × {} ÷ 16,000",
                                ounces,
                                feet));
    }

    private static Outputs solvePerRow(Given given, Working working) {
        double pounds = given.number("lb_ac");
        double spacing = given.number("row_spacing_in");
        double feet = RowLength.showFeetPerAcre(working, spacing);
        return new Outputs()
                .put(
                        "oz_per_1000_row_ft",
                        working.line(
                                "rate along the row",
                                ozPer1000Feet(pounds, spacing),
                                "oz/1000 ft",
                                "{} × 16,000 ÷ {}",
                                pounds,
                                feet));
    }

    private static Outputs solveCatch(Given given, Working working) {
        double pounds = given.number("lb_ac");
        double course = given.number("course_ft");
        double band = given.number("band_in");
        return new Outputs()
                .put(
                        "oz",
                        working.line(
                                "to catch",
                                catchOz(pounds, course, band),
                                "oz",
                                "{} lb/ac × {} ft × {} in ÷ 12 × 16 ÷ 43,560",
                                pounds,
                                course,
                                band));
    }
}
