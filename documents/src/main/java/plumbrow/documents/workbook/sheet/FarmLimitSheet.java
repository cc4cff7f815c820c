package plumbrow.documents.workbook.sheet;

import plumbrow.advice.means.FarmLimit;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;

/** Money, risk and refuge of a farm as a whole. */
public final class FarmLimitSheet {
    static final Column<String> FARM = FarmWords.farm();
    static final Column<Double> CAPITAL = Column.of(
                    "capital_usd",
                    NumberKind.between(0, 1e9),
                    "money there is for inputs and trips until harvest",
                    "180000")
            .in("$")
            .blankMeans("no limit");
    static final Column<Double> LEAST = Column.of(
                    "least_in_worst_tenth_usd",
                    NumberKind.between(-1e9, 1e9),
                    "what all fields together must bring on average in the worst tenth of seasons",
                    "150000")
            .in("$")
            .blankMeans("no limit");
    static final Column<Double> REFUGE = Column.of(
                    "least_refuge_pct",
                    Words.PERCENT,
                    "corn without insect traits, blends by the share in the bag, of all corn acres",
                    "10")
            .in("%")
            .blankMeans("no more than each tag asks for");
    static final Column<Double> TIE = Column.of(
                    "yield_tie",
                    Words.SHARE,
                    "how the yields of two fields go together, 0 not at all, 1 wholly; common practice, no source",
                    "0.5")
            .otherwise(FarmLimit.USUAL_YIELD_TIE);
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<FarmLimit> SHEET = Sheet.<FarmLimit>named(
                    "farm_limits",
                    "What holds for a farm as a whole: one row for a farm.",
                    season -> season.work().means().limits())
            .optional()
            .column(FARM, FarmLimit::farm)
            .column(CAPITAL, FarmLimit::capitalUsd)
            .column(LEAST, FarmLimit::leastInWorstTenthUsd)
            .column(REFUGE, FarmLimit::leastRefugePct)
            .column(TIE, FarmLimit::yieldTie)
            .column(SOURCE, FarmLimit::source)
            .once(FARM)
            .build(row -> new FarmLimit(
                    row.get(FARM),
                    row.find(CAPITAL),
                    row.find(LEAST),
                    row.find(REFUGE),
                    row.get(TIE),
                    row.get(SOURCE)));

    private FarmLimitSheet() {}
}
