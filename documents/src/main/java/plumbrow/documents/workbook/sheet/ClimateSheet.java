package plumbrow.documents.workbook.sheet;

import plumbrow.advice.weeds.MonthClimate;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;

/** The usual weather of a place, month by month. */
public final class ClimateSheet {
    private static final NumberKind FAHRENHEIT = NumberKind.between(-60, 130);

    public static final Column<String> PLACE = place();
    public static final Column<Integer> MONTH = Column.of(
                    "month", new WholeKind(1, 12), "the month, 1 for January", "5")
            .need();
    static final Column<Double> MEAN = Column.of("mean_f", FAHRENHEIT, "mean air temperature", "61")
            .in("°F")
            .need();
    static final Column<Double> LOW = degrees("low_f", "mean of the daily lows", "50");
    static final Column<Double> HIGH = degrees("high_f", "mean of the daily highs", "72");
    static final Column<Double> RAIN = Column.of(
                    "rain_in", NumberKind.between(0, 60), "rain and melted snow of the month", "4.4")
            .in("in")
            .need();
    static final Column<Double> RAIN_DAYS = Column.of(
                    "rain_days", NumberKind.between(0, 31), "days with rain in the month", "11")
            .in("days")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<MonthClimate> SHEET = Sheet.<MonthClimate>named(
                    "climate",
                    "The usual weather of a field or county: twelve rows for a place. The seasons that may come are"
                            + " made from it.",
                    season -> season.pests().weedBook().climate())
            .optional()
            .column(PLACE, MonthClimate::place)
            .column(MONTH, MonthClimate::month)
            .column(MEAN, MonthClimate::meanF)
            .column(LOW, MonthClimate::lowF)
            .column(HIGH, MonthClimate::highF)
            .column(RAIN, MonthClimate::rainIn)
            .column(RAIN_DAYS, MonthClimate::rainDays)
            .column(SOURCE, MonthClimate::source)
            .once(PLACE, MONTH)
            .check(Words.ordered(LOW, MEAN))
            .check(Words.ordered(MEAN, HIGH))
            .build(row -> new MonthClimate(
                    row.get(PLACE),
                    row.get(MONTH),
                    row.get(MEAN),
                    row.find(LOW),
                    row.find(HIGH),
                    row.get(RAIN),
                    row.get(RAIN_DAYS),
                    row.get(SOURCE)));

    private ClimateSheet() {}

    /** A field, or a county for all fields in it. */
    static Column<String> place() {
        return Column.of(
                        "place",
                        TextKind.NAME,
                        "a field by its name, or a county for all fields in it, as IA: Adams",
                        "IA: Adams")
                .need();
    }

    private static Column<Double> degrees(String key, String meaning, String example) {
        return Column.of(key, FAHRENHEIT, meaning, example).in("°F").blankMeans("unknown, the mean is taken");
    }
}
