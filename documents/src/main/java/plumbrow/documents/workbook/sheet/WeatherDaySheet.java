package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;

/** Measured days of a place. */
public final class WeatherDaySheet {
    private static final NumberKind FAHRENHEIT = NumberKind.between(-60, 130);

    public static final Column<String> PLACE = ClimateSheet.place();
    public static final Column<LocalDate> DATE =
            Column.of("date", new DateKind(), "the day", "2025-05-04").need();
    static final Column<Double> LOW = Column.of("low_f", FAHRENHEIT, "lowest air temperature", "48")
            .in("°F")
            .need();
    static final Column<Double> HIGH = Column.of("high_f", FAHRENHEIT, "highest air temperature", "71")
            .in("°F")
            .need();
    static final Column<Double> RAIN = Column.of("rain_in", NumberKind.between(0, 30), "rain of the day", "0.4")
            .in("in")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<WeatherDay> SHEET = Sheet.<WeatherDay>named(
                    "weather_days",
                    "Days as they were measured, years from 1 March to 30 September without a gap. Ten years or more"
                            + " are the seasons that may come; one year never is.",
                    season -> season.pests().weedBook().days())
            .optional()
            .column(PLACE, WeatherDay::place)
            .column(DATE, WeatherDay::date)
            .column(LOW, WeatherDay::lowF)
            .column(HIGH, WeatherDay::highF)
            .column(RAIN, WeatherDay::rainIn)
            .column(SOURCE, WeatherDay::source)
            .once(PLACE, DATE)
            .check(Words.ordered(LOW, HIGH))
            .build(row -> new WeatherDay(
                    row.get(PLACE), row.get(DATE), row.get(LOW), row.get(HIGH), row.get(RAIN), row.get(SOURCE)));

    private WeatherDaySheet() {}
}
