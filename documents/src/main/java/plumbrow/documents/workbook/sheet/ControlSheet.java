package plumbrow.documents.workbook.sheet;

import plumbrow.advice.shelf.Control;
import plumbrow.documents.workbook.form.AmountColumns;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DistributionColumns;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** How well products work. */
public final class ControlSheet {
    public static final Column<String> PRODUCT = Column.of("product", TextKind.NAME, "the product", "Ridge 12")
            .need()
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    public static final Column<String> PEST = Column.of(
                    "pest",
                    TextKind.NAME,
                    "insect or weed, spelled as in the insects or weeds sheet",
                    "western corn rootworm")
            .need();
    static final Column<Double> RATE = Column.of(
                    "rate", NumberKind.above(0).upTo(1_000_000), "the rate at which this control was seen", "6")
            .in("rate_unit")
            .need();
    public static final Column<RateUnit> RATE_UNIT = Column.of(
                    "rate_unit", new RateUnitKind(), "unit of rate", "fl oz/ac")
            .need();
    private static final AmountColumns<RateUnit> AT = AmountColumns.rate(RATE, RATE_UNIT);
    static final DistributionColumns SHARE = DistributionColumns.of(
                    "control_*",
                    Words.SHARE,
                    "share",
                    "share of the injury, insects or plants that it removes",
                    0.35,
                    0.55,
                    0.75)
            .need()
            .spreadWhereBlank();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Control> SHEET = Sheet.<Control>named(
                    "control",
                    "How well a product controls a pest: one row for a product, pest and rate.",
                    season -> season.shelf().controls())
            .column(PRODUCT, Control::product)
            .column(PEST, Control::pest)
            .amount(AT, Control::rate)
            .distribution(SHARE, Control::share)
            .column(SOURCE, Control::source)
            .once(PRODUCT, PEST, RATE, RATE_UNIT)
            .build(row -> new Control(row.get(PRODUCT), row.get(PEST), AT.get(row), SHARE.read(row), row.get(SOURCE)));

    private ControlSheet() {}
}
