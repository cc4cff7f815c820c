package plumbrow.science.weather;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.text;

import java.time.DateTimeException;
import java.time.LocalDate;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Range;

/** Inputs that several figures of this subject ask for, in the same words. */
final class Asked {
    static final Input TEMPERATURE = number("temperature_c", "Air temperature", "°C", Range.closed(-40, 50), "20");
    static final Input LATITUDE = number("latitude", "Latitude, north positive", "°", Range.closed(-90, 90), "42.0347");
    static final Input LONGITUDE =
            number("longitude", "Longitude, east positive", "°", Range.closed(-180, 180), "-93.62");
    static final Input DATE = text("date", "Date", "2024-05-15");
    static final Input OFFSET = number(
            "utc_offset_h",
            "Hours of the clock from UTC: −6 for Central standard, −5 for Central daylight time",
            "h",
            Range.closed(-14, 14),
            "-6");

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2100;

    private Asked() {}

    /** The date, within the two centuries for which the series holds. */
    static LocalDate date(Given given) {
        String expected = "a date of the years 1900 to 2100, such as 2024-05-15";
        try {
            LocalDate date = LocalDate.parse(given.word("date"));
            if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
                throw given.refuse("date", expected);
            }
            return date;
        } catch (DateTimeException e) {
            throw given.refuse("date", expected);
        }
    }
}
