package plumbrow.documents.workbook.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.SavedSeed;
import plumbrow.advice.shelf.Seed;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.WordKind;

/** What saved seed costs instead of a price. All of it for saved seed, none of it for bought seed. */
public final class SavedColumns {
    public static final Column<Boolean> SAVED = Column.of(
                    "saved", WordKind.yesNo(), "whether it is saved from an own harvest", "no")
            .otherwise(false);
    static final Column<Double> YEARS_BEHIND = Column.of(
                    "years_behind", NumberKind.between(0, 50), "years since the variety was current", "3")
            .in("years");
    static final Column<Double> BIN_PRICE = Column.of(
                    "bin_price_usd_bu", NumberKind.between(0, 1000), "sale value of the grain, net of haul", "6.10")
            .in("$/bu");
    static final Column<Double> CLEANING = Column.of(
                    "cleaning_usd_bu",
                    NumberKind.between(0, 1000),
                    "cleaning, storage and handling, for each bushel drawn",
                    "1.75")
            .in("$/bu");
    static final Column<Double> TREATMENT = Column.of(
                    "treatment_usd_bu", NumberKind.between(0, 1000), "treatment, for each bushel planted", "4")
            .in("$/bu");
    static final Column<Double> CLEANOUT = Column.of(
                    "cleanout_pct", NumberKind.between(0, 99), "share of drawn bushels lost in cleaning", "8")
            .in("%");
    static final Column<Double> TESTS = Column.of(
                    "tests_usd", Words.DOLLARS, "germination and other tests for the lot", "60")
            .in("$");
    static final Column<Double> LOT_ACRES = Column.of(
                    "lot_acres",
                    NumberKind.above(0).upTo(1_000_000),
                    "acres the lot plants, over which the tests are spread",
                    "160")
            .in("ac");
    private static final List<Column<Double>> COSTS =
            List.of(YEARS_BEHIND, BIN_PRICE, CLEANING, TREATMENT, CLEANOUT, TESTS, LOT_ACRES);

    private SavedColumns() {}

    static Sheet.Maker<Seed> addTo(Sheet.Maker<Seed> sheet) {
        return sheet.shown(SAVED, seed -> seed.saved() != null)
                .column(
                        YEARS_BEHIND,
                        seed -> seed.saved() == null ? null : seed.saved().yearsBehind())
                .column(
                        BIN_PRICE,
                        seed -> seed.saved() == null ? null : seed.saved().binPriceUsdPerBu())
                .column(
                        CLEANING,
                        seed -> seed.saved() == null ? null : seed.saved().cleaningUsdPerBu())
                .column(
                        TREATMENT,
                        seed -> seed.saved() == null ? null : seed.saved().treatmentUsdPerBu())
                .column(
                        CLEANOUT,
                        seed -> seed.saved() == null ? null : seed.saved().cleanoutPct())
                .column(
                        TESTS,
                        seed -> seed.saved() == null ? null : seed.saved().testsUsd())
                .column(
                        LOT_ACRES,
                        seed -> seed.saved() == null ? null : seed.saved().lotAcres())
                .check(SavedColumns::check);
    }

    private static void check(Row row, Objections objections) {
        Boolean saved = row.find(SAVED);
        for (Column<Double> cost : COSTS) {
            if (Boolean.TRUE.equals(saved) && row.blank(cost)) {
                objections.at(row, cost, cost.kind().words() + ", since this is saved seed: " + cost.meaning());
            } else if (Boolean.FALSE.equals(saved) && !row.blank(cost)) {
                objections.at(row, cost, "nothing, since the column saved does not say yes");
            }
        }
    }

    static @Nullable SavedSeed saved(Row row) {
        return row.blank(YEARS_BEHIND)
                ? null
                : new SavedSeed(
                        row.get(YEARS_BEHIND),
                        row.get(BIN_PRICE),
                        row.get(CLEANING),
                        row.get(TREATMENT),
                        row.get(CLEANOUT),
                        row.get(TESTS),
                        row.get(LOT_ACRES));
    }
}
