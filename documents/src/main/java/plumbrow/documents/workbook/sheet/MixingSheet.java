package plumbrow.documents.workbook.sheet;

import java.util.List;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.tank.MixCare;
import plumbrow.documents.workbook.form.AmountColumns;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.Together;
import plumbrow.documents.workbook.form.UnitKind;
import plumbrow.documents.workbook.form.WordKind;

/** What labels and containers say of mixing. */
public final class MixingSheet {
    /** Codes in the order in which they usually go in. */
    private static final WordKind<String> FORMULATIONS = WordKind.of(List.of(
            "AMS COMPAT DEFOAMER WSP WP WDG WG DF SG SP DG SC F CS ME SE AS ZC SL S L EC EW OD COC MSO NIS OIL DRA G"
                    .split(" ")));

    static final Column<String> PRODUCT = Words.product("the product");
    static final Column<String> FORMULATION = Column.of(
                    "formulation", FORMULATIONS, "formulation code; AMS, NIS, MSO, COC for additions", "SC")
            .blankMeans("not read");
    static final Column<Double> CONTAINER =
            Column.of("container", NumberKind.above(0).upTo(100_000), "what one container holds", "2.5");
    static final Column<FarmUnit> CONTAINER_UNIT =
            Column.of("container_unit", UnitKind.any(), "the unit of container", "gal");
    static final Column<Double> MARK = Column.of(
                    "mark", NumberKind.above(0).upTo(1000), "smallest amount that can be measured of it", "1")
            .blankMeans("1 fl oz, or 0.1 lb of a dry product");
    static final Column<FarmUnit> MARK_UNIT = Column.of("mark_unit", UnitKind.any(), "the unit of mark", "fl oz");
    private static final AmountColumns<FarmUnit> HOLDS = AmountColumns.of(CONTAINER, CONTAINER_UNIT);
    private static final AmountColumns<FarmUnit> SMALLEST = AmountColumns.of(MARK, MARK_UNIT);
    static final Column<String> ORDER = Column.of(
                    "order",
                    TextKind.PROSE,
                    "the label's own words on when it goes into the tank",
                    "add last, after the tank is full")
            .blankMeans("the label has none, or was not read");
    static final Column<String> CLEAN_OUT = Column.of(
                    "clean_out",
                    TextKind.PROSE,
                    "the label's words on cleaning the tank afterwards",
                    "three rinses, the second with ammonia")
            .blankMeans("not read");
    static final Column<MixCare.Conditioner> AMS = Column.of(
                    "ams",
                    WordKind.of(MixCare.Conditioner.class, MixCare.Conditioner::word),
                    "what the label says of ammonium sulfate in the tank",
                    "required")
            .blankMeans("not read");
    static final Column<Double> AMS_LOW = Words.number(
            "ams_low_lb_100gal", NumberKind.between(0, 50), "lb/100 gal", "least of it by the label", "8.5");
    static final Column<Double> AMS_HIGH = Words.number(
            "ams_high_lb_100gal", NumberKind.between(0, 50), "lb/100 gal", "most of it by the label", "17");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<MixCare> SHEET = Sheet.<MixCare>named(
                    "mixing",
                    "How products are mixed: one row for a product, additions such as surfactants included.",
                    season -> season.work().means().tank().mixing())
            .optional()
            .column(PRODUCT, MixCare::product)
            .column(FORMULATION, MixCare::formulation)
            .amount(HOLDS, MixCare::container)
            .amount(SMALLEST, MixCare::mark)
            .column(ORDER, MixCare::order)
            .column(CLEAN_OUT, MixCare::cleanOut)
            .column(AMS, MixCare::ams)
            .column(AMS_LOW, MixCare::amsLowLb)
            .column(AMS_HIGH, MixCare::amsHighLb)
            .column(SOURCE, MixCare::source)
            .once(PRODUCT)
            .check(Together.of(CONTAINER, CONTAINER_UNIT))
            .check(Together.of(MARK, MARK_UNIT))
            .check(Words.ordered(AMS_LOW, AMS_HIGH))
            .build(row -> new MixCare(
                    row.get(PRODUCT),
                    row.find(FORMULATION),
                    HOLDS.find(row),
                    SMALLEST.find(row),
                    row.find(ORDER),
                    row.find(CLEAN_OUT),
                    row.find(AMS),
                    row.find(AMS_LOW),
                    row.find(AMS_HIGH),
                    row.get(SOURCE)));

    private MixingSheet() {}
}
