package plumbrow.documents.workbook.sheet;

import plumbrow.advice.tank.HourLimit;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** Limits of the hour that states, special words of labels or farms set. */
public final class HourLimitSheet {
    private static final NumberKind VALUE = NumberKind.between(-40, 200);

    static final Column<String> STATE = Column.of("state", Words.STATE, "the state whose rule it is", "IA")
            .blankMeans("of the label of product, or the farm's own");
    static final Column<String> PRODUCT = Column.of("product", TextKind.NAME, "the product it is for", "Ridge 12")
            .blankMeans("every spray")
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    static final Column<HourLimit.Measure> MEASURE = Column.of(
                    "measure",
                    WordKind.of(HourLimit.Measure.class, HourLimit.Measure::word),
                    "what is limited: mph at the boom, °F, °C, or hours",
                    "hours after sunrise")
            .need();
    static final Column<Double> LEAST =
            Column.of("least", VALUE, "least value allowed", "1").blankMeans("no such end");
    static final Column<Double> MOST =
            Column.of("most", VALUE, "most value allowed", "85").blankMeans("no such end");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<HourLimit> SHEET = Sheet.<HourLimit>named(
                    "hour_limits",
                    "Limits of the hour beside those of the sheet terms: one row for a rule.",
                    season -> season.work().means().tank().limits())
            .optional()
            .column(STATE, HourLimit::state)
            .column(PRODUCT, HourLimit::product)
            .column(MEASURE, HourLimit::measure)
            .column(LEAST, HourLimit::least)
            .column(MOST, HourLimit::most)
            .column(SOURCE, HourLimit::source)
            .check(HourLimitSheet::checkEnds)
            .build(row -> new HourLimit(
                    row.find(STATE),
                    row.find(PRODUCT),
                    row.get(MEASURE),
                    row.find(LEAST),
                    row.find(MOST),
                    row.get(SOURCE)));

    private HourLimitSheet() {}

    private static void checkEnds(Row row, Objections objections) {
        HourLimit.Measure measure = row.find(MEASURE);
        if (measure == null) {
            return;
        }
        boolean hours = measure == HourLimit.Measure.AFTER_SUNRISE
                || measure == HourLimit.Measure.BEFORE_SUNSET
                || measure == HourLimit.Measure.RAIN_FREE;
        Double least = row.find(LEAST);
        Double most = row.find(MOST);
        if (hours && (least == null || most != null)) {
            objections.at(row, hours && most != null ? MOST : LEAST, "hours under least, and nothing under most");
        } else if (least == null && most == null) {
            objections.at(row, LEAST, "a value under least, under most, or both");
        } else if (least != null && most != null && least > most) {
            objections.at(row, LEAST, "no more than most");
        }
    }
}
