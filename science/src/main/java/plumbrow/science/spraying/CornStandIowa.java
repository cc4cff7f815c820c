package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Corn yield by planting window and stand, by the two tables of Iowa, beside the Purdue table of corn-stand-yield.
 *
 * Columns are the windows of the table, which differ between the two; rows are stands, in between in proportion. Cells that
 * were not seen (25,000 plants after 25 May in 2010) are refused, not guessed. For gaps take off 2 % for several of 1 to 3
 * ft, 5 to 6 % for many of 4 to 6 ft.
 *
 * Source: Iowa State PM-1885 (2001) as printed 24 May 2004, and its revision of 3 May 2010; gaps: Iowa State 1996, 2004.
 */
public final class CornStandIowa {
    private static final List<String> WINDOWS = List.of("first", "second", "third", "fourth", "fifth");
    private static final double[] STANDS_2001 = {12_000, 16_000, 20_000, 24_000, 28_000, 32_000};
    private static final double[][] PCT_2001 = {
        {68, 67, 61, 46, 35},
        {74, 73, 67, 50, 38},
        {81, 80, 73, 55, 42},
        {94, 93, 85, 64, 49},
        {100, 99, 90, 68, 52},
        {100, 99, 90, 68, 52}
    };
    private static final double[] STANDS_2010 = {25_000, 30_000, 35_000};
    private static final double[][] PCT_2010 = {
        {95, 91, 83, Double.NaN, Double.NaN}, {99, 95, 86, 69, 53}, {100, 96, 87, 70, 54}
    };
    private static final List<String> GAPS = List.of("none", "several-short", "many-long");
    private static final double[] GAP_PCT = {0, 2, 5};

    public static final Figure FIGURE = Figure.declare("corn-stand-iowa", Subject.SPRAYING)
            .question("What share of its best yield does corn of this window and stand give, by Iowa's tables?")
            .input(word("table", "Table of 2001 or of 2010", List.of("2001", "2010"), "2010"))
            .input(word("window", "Window of planting, as numbered in the validity", WINDOWS, "second"))
            .input(number("plants_ac", "Plants on an acre", "plants/ac", Range.closed(12_000, 35_000), "31000"))
            .input(word("gaps", "Gaps: several of 1 to 3 ft, many of 4 to 6 ft", GAPS, "none")
                    .orElse("none"))
            .output("yield_pct", "Of the best yield", "%")
            .formula("the table's value at the window, in proportion between stands, less 2 or 5 points for gaps")
            .source("[iowa-pm1885]", VERIFIED)
            .validity(
                    "2001: 20 Apr–5 May, 13–19 May, 26 May–1 Jun, 10–16 Jun, 24–28 Jun, 12,000 to 32,000 plants. 2010: 20 Apr–5 May, 5–15 May, 15–25 May, 25 May–5 Jun, 5–15 Jun, 25,000 to 35,000 plants.")
            .caution(
                    "For 20,000 plants on the best date Iowa 2001 says 81 %, Iowa 2010 89, Purdue 92: compare within one table.")
            .example("table=2010 window=second plants_ac=30000", "yield_pct=95", "[iowa-pm1885], 2010", VERIFIED)
            .example("table=2010 window=first plants_ac=35000", "yield_pct=100", "[iowa-pm1885], 2010", VERIFIED)
            .example("table=2010 window=third plants_ac=25000", "yield_pct=83", "[iowa-pm1885], 2010", VERIFIED)
            .example("table=2001 window=first plants_ac=20000", "yield_pct=81", "[iowa-pm1885], 2004", VERIFIED)
            .example("table=2001 window=fourth plants_ac=16000", "yield_pct=50", "[iowa-pm1885], 2004", VERIFIED)
            .example(
                    "table=2001 window=first plants_ac=22000 gaps=several-short",
                    "yield_pct=85.5",
                    "87.5 halfway, less 2",
                    COMPUTED)
            .model(CornStandIowa::solve);

    private CornStandIowa() {}

    private static Outputs solve(Given given, Working working) {
        boolean older = given.word("table").equals("2001");
        double[] stands = older ? STANDS_2001 : STANDS_2010;
        double[][] table = older ? PCT_2001 : PCT_2010;
        double plants = given.number("plants_ac");
        if (plants < stands[0] || plants > stands[stands.length - 1]) {
            throw given.refuse(
                    "plants_ac",
                    older
                            ? "12,000 to 32,000 plants for the table of 2001"
                            : "25,000 to 35,000 plants for the table of 2010");
        }
        int window = WINDOWS.indexOf(given.word("window"));
        int row = 0;
        while (row < stands.length - 2 && plants > stands[row + 1]) {
            row++;
        }
        if (Double.isNaN(table[row][window])) {
            throw given.refuse("window", "first to third below 30,000 plants: the later cells of 2010 were not seen");
        }
        double low = table[row][window];
        double high = table[row + 1][window];
        double width = stands[row + 1] - stands[row];
        double even = working.line(
                "even stand",
                low + (high - low) * (plants - stands[row]) / width,
                "%",
                "{} + {} × ({} − {}) ÷ {}",
                low,
                high - low,
                plants,
                stands[row],
                width);
        double gaps = GAP_PCT[GAPS.indexOf(given.word("gaps"))];
        return new Outputs().put("yield_pct", working.line("with gaps", even - gaps, "%", "{} − {}", even, gaps));
    }
}
