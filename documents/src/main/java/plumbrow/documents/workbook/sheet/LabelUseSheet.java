package plumbrow.documents.workbook.sheet;

import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.documents.workbook.form.AmountColumns;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Column.Stricter;
import plumbrow.documents.workbook.form.RateRange;
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
    public static final Column<Double> LOW = Column.of("low_rate", Words.RATE, "lowest labelled rate", "3")
            .in("rate_unit")
            .blankMeans("unknown")
            .called("Lowest rate")
            .stricter(Stricter.MORE);
    public static final Column<Double> HIGH = Column.of(
                    "high_rate", Words.RATE, "highest labelled rate for one application", "6")
            .in("rate_unit")
            .blankMeans("unknown")
            .called("Highest rate")
            .stricter(Stricter.LESS);
    public static final Column<RateUnit> RATE_UNIT =
            Column.of("rate_unit", new RateUnitKind(), "unit of the low and the high rate", "fl oz/ac");
    static final Column<Ask> LESS_FORBIDDEN =
            Words.ask("less_forbidden", "whether the label forbids less than the lowest rate");
    static final Column<Double> SEASON_MAX = Column.of(
                    "season_max", Words.RATE, "most of the product in one season", "12")
            .in("season_max_unit")
            .blankMeans("unknown")
            .called("Most in a season")
            .stricter(Stricter.LESS);
    public static final Column<RateUnit> SEASON_MAX_UNIT =
            Column.of("season_max_unit", new RateUnitKind(), "unit of season_max", "fl oz/ac");
    static final Column<Integer> APPLICATIONS = Column.of(
                    "most_applications", new WholeKind(1, 100), "most applications in one season", "2")
            .blankMeans("unknown")
            .called("Most applications in a season")
            .stricter(Stricter.LESS);
    static final Column<Integer> PRE_HARVEST = Column.of(
                    "phi_days", new WholeKind(0, 400), "pre-harvest interval (PHI)", "30")
            .in("days")
            .blankMeans("unknown")
            .called("Days before harvest")
            .stricter(Stricter.MORE);
    static final Column<String> SOURCE = Words.source();

    private static final RateRange RATES = new RateRange(LOW, HIGH, RATE_UNIT);
    private static final AmountColumns<RateUnit> SEASON = AmountColumns.rate(SEASON_MAX, SEASON_MAX_UNIT);

    public static final Sheet<LabelUse> SHEET = Sheet.<LabelUse>named(
                    "label_uses",
                    "What each label allows on each crop: one row for a product and crop.",
                    season -> season.shelf().labelUses())
            .column(PRODUCT, LabelUse::product)
            .column(CROP, LabelUse::crop)
            .rates(RATES, LabelUse::lowRate, LabelUse::highRate)
            .column(LESS_FORBIDDEN, LabelUse::lessForbidden)
            .amount(SEASON, LabelUse::seasonMax)
            .column(APPLICATIONS, LabelUse::mostApplications)
            .column(PRE_HARVEST, LabelUse::preHarvestDays)
            .column(SOURCE, LabelUse::source)
            .once(PRODUCT, CROP)
            .check(Together.of(SEASON_MAX, SEASON_MAX_UNIT))
            .check(RATES)
            .build(LabelUseSheet::use);

    private LabelUseSheet() {}

    private static LabelUse use(Row row) {
        return new LabelUse(
                row.get(PRODUCT),
                row.get(CROP),
                RATES.low(row),
                RATES.high(row),
                row.get(LESS_FORBIDDEN),
                SEASON.find(row),
                row.find(APPLICATIONS),
                row.find(PRE_HARVEST),
                row.get(SOURCE));
    }
}
