package plumbrow.documents.workbook.sheet;

import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.Together;
import plumbrow.documents.workbook.form.WholeKind;

/** What labels allow. A blank cell is unknown, never allowed. */
public final class LabelUseSheet {
    public static final Column<String> PRODUCT = Column.of("product", TextKind.NAME, "the product", "Ridge 12")
            .need()
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    public static final Column<Crop> CROP =
            Column.of("crop", Words.CROP, "a crop the label lists", "corn").need();
    public static final Column<Double> LOW = Column.of("low_rate", RateCells.RATE, "lowest labelled rate", "3")
            .in("rate_unit")
            .blankMeans("unknown");
    public static final Column<Double> HIGH = Column.of(
                    "high_rate", RateCells.RATE, "highest labelled rate for one application", "6")
            .in("rate_unit")
            .blankMeans("unknown");
    public static final Column<RateUnit> RATE_UNIT =
            Column.of("rate_unit", new RateUnitKind(), "unit of the low and the high rate", "fl oz/ac");
    static final Column<Ask> LESS_FORBIDDEN =
            Words.ask("less_forbidden", "whether the label forbids less than the lowest rate");
    static final Column<Double> SEASON_MAX = Column.of(
                    "season_max", RateCells.RATE, "most of the product in one season", "12")
            .in("season_max_unit")
            .blankMeans("unknown");
    public static final Column<RateUnit> SEASON_MAX_UNIT =
            Column.of("season_max_unit", new RateUnitKind(), "unit of season_max", "fl oz/ac");
    static final Column<Integer> APPLICATIONS = Column.of(
                    "most_applications", new WholeKind(1, 100), "most applications in one season", "2")
            .blankMeans("unknown");
    static final Column<Integer> PRE_HARVEST = Column.of(
                    "phi_days", new WholeKind(0, 400), "pre-harvest interval (PHI)", "30")
            .in("days")
            .blankMeans("unknown");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<LabelUse> SHEET = Sheet.<LabelUse>named(
                    "label_uses",
                    "What each label allows on each crop: one row for a product and crop.",
                    season -> season.shelf().labelUses())
            .column(PRODUCT, LabelUse::product)
            .column(CROP, LabelUse::crop)
            .column(LOW, use -> RateCells.value(use.lowRate()))
            .column(HIGH, use -> RateCells.value(RateCells.highAsLow(use.lowRate(), use.highRate())))
            .column(RATE_UNIT, use -> RateCells.unit(use.lowRate() != null ? use.lowRate() : use.highRate()))
            .column(LESS_FORBIDDEN, LabelUse::lessForbidden)
            .column(SEASON_MAX, use -> RateCells.value(use.seasonMax()))
            .column(SEASON_MAX_UNIT, use -> RateCells.unit(use.seasonMax()))
            .column(APPLICATIONS, LabelUse::mostApplications)
            .column(PRE_HARVEST, LabelUse::preHarvestDays)
            .column(SOURCE, LabelUse::source)
            .once(PRODUCT, CROP)
            .check(Together.of(SEASON_MAX, SEASON_MAX_UNIT))
            .check(RateCells.lowAndHigh(LOW, HIGH, RATE_UNIT))
            .build(LabelUseSheet::use);

    private LabelUseSheet() {}

    private static LabelUse use(Row row) {
        return new LabelUse(
                row.get(PRODUCT),
                row.get(CROP),
                RateCells.rate(row, LOW, RATE_UNIT),
                RateCells.rate(row, HIGH, RATE_UNIT),
                row.get(LESS_FORBIDDEN),
                RateCells.rate(row, SEASON_MAX, SEASON_MAX_UNIT),
                row.find(APPLICATIONS),
                row.find(PRE_HARVEST),
                row.get(SOURCE));
    }
}
