package plumbrow.documents.workbook.sheet;

import plumbrow.advice.weeds.Basis;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weeds.WeedRating;
import plumbrow.documents.workbook.form.AmountColumns;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DistributionColumns;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;
import plumbrow.documents.workbook.form.WordKind;

/** The adviser's own ratings of herbicides. */
public final class RatingSheet {
    public static final Column<String> PRODUCT = Words.product("the herbicide");
    public static final Column<String> WEED = Column.of(
                    "weed", TextKind.NAME, "the weed, spelled as in the weeds sheet", "waterhemp")
            .need();
    static final Column<Timing> TIMING = Column.of(
                    "timing",
                    WordKind.of(Timing.class, Timing::word),
                    "soil: laid before the weed is up; leaf: sprayed on it",
                    "leaf")
            .need();
    static final Column<Double> RATE = Column.of("rate", Words.RATE, "the rate at which it was seen", "22")
            .in("rate_unit")
            .need();
    public static final Column<RateUnit> RATE_UNIT = Column.of(
                    "rate_unit", new RateUnitKind(), "unit of rate", "fl oz/ac")
            .need();
    private static final AmountColumns<RateUnit> AT = AmountColumns.rate(RATE, RATE_UNIT);
    static final Column<Double> HEIGHT = Column.of(
                    "height_in",
                    NumberKind.above(0).upTo(200),
                    "height of the weed that was sprayed; for leaf only",
                    "4")
            .in("in")
            .blankMeans("4 inches");
    static final Column<Integer> SEEN = Column.of(
                    "seen_days", new WholeKind(1, 200), "days after application on which it was seen", "28")
            .in("days")
            .blankMeans("four weeks");
    static final DistributionColumns CONTROL = DistributionColumns.of(
                    "control_*", Words.SHARE, "share", "share of the plants that it kills", 0.8, 0.9, 0.97)
            .need()
            .spreadWhereBlank();
    static final Column<Basis> BASIS = Column.of(
                    "basis", WordKind.of(Basis.class, Basis::word), "what the rating rests on", "trial")
            .need();
    static final Column<String> AS_FOR = Column.of(
                    "as_for",
                    TextKind.NAME,
                    "the weed it was really seen on, where it is borrowed",
                    "tall morningglory")
            .blankMeans("seen on this weed");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<WeedRating> SHEET = Sheet.<WeedRating>named(
                    "ratings",
                    "How well herbicides work here: one row for a product, weed, timing, rate and height. They come before"
                            + " published ratings.",
                    season -> season.pests().weedBook().ratings())
            .optional()
            .column(PRODUCT, WeedRating::product)
            .column(WEED, WeedRating::weed)
            .column(TIMING, WeedRating::timing)
            .amount(AT, WeedRating::rate)
            .column(HEIGHT, WeedRating::heightIn)
            .column(SEEN, WeedRating::seenDays)
            .distribution(CONTROL, WeedRating::control)
            .column(BASIS, WeedRating::basis)
            .column(AS_FOR, WeedRating::asFor)
            .column(SOURCE, WeedRating::source)
            .once(PRODUCT, WEED, TIMING, RATE, RATE_UNIT, HEIGHT)
            .check(RatingSheet::heightOnLeavesOnly)
            .build(row -> new WeedRating(
                    row.get(PRODUCT),
                    row.get(WEED),
                    row.get(TIMING),
                    AT.get(row),
                    row.find(HEIGHT),
                    row.find(SEEN),
                    CONTROL.read(row),
                    row.get(BASIS),
                    row.find(AS_FOR),
                    row.get(SOURCE)));

    private RatingSheet() {}

    private static void heightOnLeavesOnly(Row row, Objections objections) {
        if (row.find(TIMING) == Timing.SOIL && !row.blank(HEIGHT)) {
            objections.at(row, HEIGHT, "nothing, since in the soil the weed is not up yet");
        }
    }
}
