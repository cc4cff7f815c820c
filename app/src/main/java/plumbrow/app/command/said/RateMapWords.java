package plumbrow.app.command.said;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import plumbrow.app.json.RateMapSummary;
import plumbrow.science.figure.Numbers;

/** A machine file in words. */
public final class RateMapWords {
    private static final int DIGITS = 4;

    private RateMapWords() {}

    /** The first sentence: what goes where, and how much of it. */
    public static String sentence(RateMapSummary map) {
        double treated = map.parts().stream()
                .filter(part -> part.value() > 0)
                .mapToDouble(RateMapSummary.Part::acres)
                .sum();
        return Numbers.fixed(treated, 1) + " of " + Numbers.fixed(map.acres(), 1) + " ac get "
                + amount(map.jobTotal()) + " " + map.totalUnit() + "; by the cells of the file "
                + amount(map.fileTotal()) + " " + map.totalUnit() + ", " + Numbers.fixed(Math.abs(map.offPct()), 1)
                + " % " + (map.offPct() < 0 ? "less" : "more") + ".";
    }

    /** Whole where that is exact enough. */
    public static String amount(double value) {
        return Numbers.fixed(value, value < 10 ? 2 : value < 1000 ? 1 : 0);
    }

    /** A rate with the digits it deserves. */
    public static String rate(double value) {
        return Numbers.plain(
                value == 0
                        ? 0
                        : new BigDecimal(value)
                                .round(new MathContext(DIGITS, RoundingMode.HALF_EVEN))
                                .doubleValue());
    }

    /** "163 rows of 88 cells, 15 ft each". */
    public static String cells(RateMapSummary map) {
        return map.rows() + (map.rows() == 1 ? " row of " : " rows of ") + map.columns()
                + (map.columns() == 1 ? " cell, " : " cells, ") + Numbers.plain(map.cellFt()) + " ft each";
    }

    public static String of(RateMapSummary map) {
        Paper paper = new Paper();
        paper.heading(map.field() + ", "
                + String.join(
                        " + ",
                        map.products().stream()
                                .map(RateMapSummary.Product::name)
                                .toList())
                + ": " + sentence(map));
        TextTable table = TextTable.empty()
                .words("part")
                .numbers("rate", map.unit())
                .numbers("in the file", map.standardUnit())
                .numbers("drawn", "ac")
                .numbers("by cells", "ac");
        map.parts()
                .forEach(part -> table.row(
                        part.name(),
                        rate(part.rate()),
                        rate(part.value() * map.step()),
                        Numbers.fixed(part.acres(), 2),
                        Numbers.fixed(part.cellAcres(), 2)));
        paper.table(table);
        map.keptClear()
                .forEach(clear -> paper.prose(
                        "  ",
                        clear.product() + " keeps " + Numbers.plain(clear.feet()) + " ft from " + clear.from() + ": "
                                + Numbers.fixed(clear.acres(), 2) + " ac at rate zero."));
        paper.prose("  ", cells(map) + ".");
        map.notes().forEach(note -> paper.prose("  ", note));
        return paper.text();
    }
}
