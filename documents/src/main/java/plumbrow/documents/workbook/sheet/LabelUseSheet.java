package plumbrow.documents.workbook.sheet;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.Together;
import plumbrow.documents.workbook.form.WholeKind;

/** What labels allow. A blank cell is unknown, never allowed. */
public final class LabelUseSheet {
    private static final NumberKind RATE = NumberKind.above(0).upTo(1_000_000);

    public static final Column<String> PRODUCT = Column.of("product", TextKind.NAME, "the product", "Ridge 12")
            .need()
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    public static final Column<Crop> CROP =
            Column.of("crop", Words.CROP, "a crop the label lists", "corn").need();
    public static final Column<Double> LOW = Column.of("low_rate", RATE, "lowest labelled rate", "3")
            .in("rate_unit")
            .blankMeans("unknown");
    public static final Column<Double> HIGH = Column.of(
                    "high_rate", RATE, "highest labelled rate for one application", "6")
            .in("rate_unit")
            .blankMeans("unknown");
    public static final Column<RateUnit> RATE_UNIT =
            Column.of("rate_unit", new RateUnitKind(), "unit of low_rate and high_rate", "fl oz/ac");
    static final Column<Ask> LESS_FORBIDDEN =
            Words.ask("less_forbidden", "whether the label forbids less than the lowest rate");
    static final Column<Double> SEASON_MAX = Column.of("season_max", RATE, "most of the product in one season", "12")
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
            .column(LOW, use -> value(use.lowRate()))
            .column(HIGH, use -> value(highAsLow(use)))
            .column(RATE_UNIT, use -> unit(use.lowRate() != null ? use.lowRate() : use.highRate()))
            .column(LESS_FORBIDDEN, LabelUse::lessForbidden)
            .column(SEASON_MAX, use -> value(use.seasonMax()))
            .column(SEASON_MAX_UNIT, use -> unit(use.seasonMax()))
            .column(APPLICATIONS, LabelUse::mostApplications)
            .column(PRE_HARVEST, LabelUse::preHarvestDays)
            .column(SOURCE, LabelUse::source)
            .once(PRODUCT, CROP)
            .check(Together.of(SEASON_MAX, SEASON_MAX_UNIT))
            .check(LabelUseSheet::checkRates)
            .build(LabelUseSheet::use);

    private LabelUseSheet() {}

    private static void checkRates(Row row, Objections objections) {
        if (row.blank(RATE_UNIT) && !(row.blank(LOW) && row.blank(HIGH))) {
            objections.at(row, RATE_UNIT, RATE_UNIT.kind().words());
        }
        Double low = row.find(LOW);
        Double high = row.find(HIGH);
        if (low != null && high != null && low > high) {
            objections.at(row, LOW, "no more than high_rate, which is " + row.found(HIGH));
        }
    }

    private static LabelUse use(Row row) {
        return new LabelUse(
                row.get(PRODUCT),
                row.get(CROP),
                rate(row, LOW, RATE_UNIT),
                rate(row, HIGH, RATE_UNIT),
                row.get(LESS_FORBIDDEN),
                rate(row, SEASON_MAX, SEASON_MAX_UNIT),
                row.find(APPLICATIONS),
                row.find(PRE_HARVEST),
                row.get(SOURCE));
    }

    private static @Nullable Amount rate(Row row, Column<Double> value, Column<RateUnit> unit) {
        Double written = row.find(value);
        return written == null ? null : row.get(unit).rate(written);
    }

    /** The highest rate in the unit of the lowest, since both share a column for it. */
    private static @Nullable Amount highAsLow(LabelUse use) {
        Amount high = use.highRate();
        Amount low = use.lowRate();
        return high == null || low == null ? high : high.in(low.unit());
    }

    private static @Nullable Double value(@Nullable Amount amount) {
        return amount == null ? null : amount.value();
    }

    private static @Nullable RateUnit unit(@Nullable Amount amount) {
        return amount == null ? null : RateUnit.perAcre(amount.unit());
    }
}
