package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How a refuge is laid into the field: planter units, strips of rows, or a band around.
 *
 *   units  k = ⌈n·f⌉ of n;  share k/n
 *   rows   N = width/spacing;  strips ⌈N·f/s⌉ of s rows each
 *   band   w = [(L+W) − √((L+W)² − 4fLW)]/4
 *
 *   f share of refuge [-];  L, W length and width of the field [ft];  w width of the band [ft]
 *
 * Always rounded up. End units of the planter make strips of twice their number where passes lie side by side; a lone last
 * pass does not.
 *
 * Source: arithmetic; strips of at least 4 rows, in some states 6: ncga.com/managing-bt-technology, Michigan 2006.
 */
public final class RefugeLayout {
    private static final Input REFUGE =
            number("refuge_pct", "Refuge, as a share of all the corn", "%", Range.above(0, 100), "20");
    private static final Input SPACING = number("row_spacing_in", "Row spacing", "in", Range.above(0, 120), "30")
            .orElse("30");
    private static final Input LEAST_ROWS = number(
                    "least_rows", "Fewest rows a strip may have", "rows", Range.closed(1, 100), "4")
            .orElse("4");
    private static final String GUIDE =
            "The grower guide of the hybrid sets the fewest rows, the distance and the placement: 4 rows in most, 6 in some states.";
    private static final double INCHES_PER_FOOT = 12;

    public static final Figure PLANTER = Figure.declare("refuge-planter", Subject.INSECTS)
            .question("How many planter units carry refuge seed?")
            .input(number("units", "Planter units", "units", Range.closed(1, 100), "12"))
            .input(REFUGE)
            .input(LEAST_ROWS)
            .output("refuge_units", "Units with refuge seed", "units")
            .output("share_pct", "Refuge planted", "%")
            .output("strip_rows", "Rows of a strip where passes lie side by side", "rows")
            .formula("units with refuge = units × refuge share, rounded up")
            .source("[michigan-refuge-2006]", VERIFIED)
            .validity("Refuge in the end units of one side, so that neighbouring passes double the strip.")
            .caution(GUIDE)
            .example("units=6 refuge_pct=20", "refuge_units=2.0 share_pct=33.3", "independent arithmetic", COMPUTED)
            .example("units=8 refuge_pct=20", "refuge_units=2.0 share_pct=25.0", "independent arithmetic", COMPUTED)
            .example(
                    "units=12 refuge_pct=20",
                    "refuge_units=3.0 share_pct=25.0 strip_rows=6.0",
                    "[michigan-refuge-2006]: last three units of 12, strips of 6 rows",
                    VERIFIED)
            .example("units=16 refuge_pct=20", "refuge_units=4.0 share_pct=25.0", "independent arithmetic", COMPUTED)
            .example("units=24 refuge_pct=20", "refuge_units=5.0 share_pct=20.8", "independent arithmetic", COMPUTED)
            .model(RefugeLayout::solvePlanter);

    public static final Figure ROWS = Figure.declare("refuge-rows", Subject.INSECTS)
            .question("How many rows of refuge does the field need in strips?")
            .input(number("width_ft", "Width of the field across the rows", "ft", Range.POSITIVE, "1320"))
            .input(SPACING)
            .input(REFUGE)
            .input(number("strip_rows", "Rows in a strip", "rows", Range.closed(1, 1000), "6")
                    .orElse("6"))
            .output("rows", "Rows across the field", "rows")
            .output("rows_needed", "Rows of refuge needed", "rows")
            .output("rows_planted", "Rows of refuge in whole strips", "rows")
            .output("share_pct", "Refuge planted", "%")
            .formula("rows = width ÷ spacing; strips = rows × share ÷ rows in a strip, rounded up")
            .source("Arithmetic", PRACTICE)
            .validity("Straight rows over a rectangle. Strips that would fill more than the field are refused.")
            .caution(GUIDE)
            .example(
                    "width_ft=1320 row_spacing_in=30 refuge_pct=20 strip_rows=6",
                    "rows=528 rows_needed=105.6 rows_planted=108 share_pct=20.45",
                    "independent arithmetic",
                    COMPUTED)
            .model(RefugeLayout::solveRows);

    public static final Figure BAND = Figure.declare("refuge-band", Subject.INSECTS)
            .question("How wide is a band of refuge around the field?")
            .input(number("length_ft", "Length of the field", "ft", Range.POSITIVE, "2640"))
            .input(number("width_ft", "Width of the field", "ft", Range.POSITIVE, "2640"))
            .input(REFUGE)
            .input(SPACING)
            .input(LEAST_ROWS)
            .output("band_ft", "Width of the band", "ft")
            .output("rows", "Rows that cover it", "rows")
            .formula("band = [(length + width) − √((length + width)² − 4 × share × length × width)] ÷ 4")
            .source("Area of a frame: arithmetic", PRACTICE)
            .validity("A rectangle. Rows are rounded up and never fewer than the fewest allowed.")
            .caution(GUIDE)
            .example("length_ft=2640 width_ft=2640 refuge_pct=20", "band_ft=139.4", "independent arithmetic", COMPUTED)
            .example("length_ft=1320 width_ft=2640 refuge_pct=5", "band_ft=22.3", "independent arithmetic", COMPUTED)
            .example(
                    "length_ft=1320 width_ft=1320 refuge_pct=20",
                    "band_ft=69.7 rows=28.0",
                    "rows: 69.7 ft at 30 in",
                    COMPUTED)
            .model(RefugeLayout::solveBand);

    private RefugeLayout() {}

    /** Width [ft] of a band that takes a share of a rectangle [ft]. */
    public static double bandFt(double lengthFt, double widthFt, double share) {
        double sum = lengthFt + widthFt;
        // The other root of the same quadratic, free of the cancellation of two near numbers.
        return share * lengthFt * widthFt / (sum + Math.sqrt(Math.max(sum * sum - 4 * share * lengthFt * widthFt, 0)));
    }

    private static Outputs solvePlanter(Given given, Working working) {
        double units = whole(given, "units");
        double pct = given.number("refuge_pct");
        double refuge = working.line(
                "units with refuge", Numbers.wholeUp(units * pct / 100), "units", "{} × {} %, rounded up", units, pct);
        double share = working.line("refuge planted", refuge / units * 100, "%", "{} ÷ {}", refuge, units);
        double strip = working.line(
                "rows of a strip, passes side by side", Math.min(2 * refuge, units), "rows", "2 × {} units", refuge);
        double least = given.number("least_rows");
        if (strip < least) {
            working.caution("Strips of " + Numbers.plain(strip) + " rows are narrower than the " + Numbers.plain(least)
                    + " rows asked for.");
        } else if (refuge < least) {
            working.caution("A lone last pass leaves only " + Numbers.plain(refuge) + " rows: too narrow on its own.");
        }
        return new Outputs().put("refuge_units", refuge).put("share_pct", share).put("strip_rows", strip);
    }

    private static Outputs solveRows(Given given, Working working) {
        double width = given.number("width_ft");
        double spacing = given.number("row_spacing_in");
        double pct = given.number("refuge_pct");
        double strip = whole(given, "strip_rows");
        double rows = working.line(
                "rows across",
                Math.floor(width * INCHES_PER_FOOT / spacing + 1e-9),
                "rows",
                "{} ft × 12 ÷ {} in",
                width,
                spacing);
        double needed = working.line("rows needed", rows * pct / 100, "rows", "{} × {} %", rows, pct);
        double planted = working.line(
                "rows in whole strips",
                Numbers.wholeUp(needed / strip) * strip,
                "rows",
                "{} ÷ {}, rounded up, × {}",
                needed,
                strip,
                strip);
        if (rows < 1 || planted > rows) {
            throw given.refuse("strip_rows", "strips that fit into the " + Numbers.plain(rows) + " rows of the field");
        }
        return new Outputs()
                .put("rows", rows)
                .put("rows_needed", needed)
                .put("rows_planted", planted)
                .put("share_pct", working.line("refuge planted", planted / rows * 100, "%", "{} ÷ {}", planted, rows));
    }

    private static Outputs solveBand(Given given, Working working) {
        double length = given.number("length_ft");
        double width = given.number("width_ft");
        double pct = given.number("refuge_pct");
        double spacing = given.number("row_spacing_in");
        double band = working.line(
                "width of the band",
                bandFt(length, width, pct / 100),
                "ft",
                "[({} + {}) − √(({} + {})² − 4 × {} % × {} × {})] ÷ 4",
                length,
                width,
                length,
                width,
                pct,
                length,
                width);
        double exact =
                working.line("rows", band * INCHES_PER_FOOT / spacing, "rows", "{} ft × 12 ÷ {} in", band, spacing);
        double least = given.number("least_rows");
        double rows = working.line(
                "rows, rounded up",
                Math.max(Numbers.wholeUp(exact), Math.ceil(least)),
                "rows",
                "{}, at least {}",
                exact,
                least);
        return new Outputs().put("band_ft", band).put("rows", rows);
    }

    private static double whole(Given given, String key) {
        double value = given.number(key);
        if (value != Math.rint(value)) {
            throw given.refuse(key, "a whole number");
        }
        return value;
    }
}
