package plumbrow.science.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.FigureInputException;

@DisplayName("The sun, against values from outside")
class SunTest {

    @ParameterizedTest(name = "{0} N {1} E on {2}: {4}, {5}")
    @CsvSource({
        "35, 0, 1994-01-02, 0, 07:08:12.8, 16:59:55.9, 1",
        "-35, 0, 1996-07-05, 0, 07:08:15.4, 17:01:04.5, 1",
        "42.0347, -93.62, 2024-05-15, -6, 04:53:20, 19:28:59, 1",
        "42.0347, -93.62, 2024-06-20, -6, 04:38:49, 19:53:41, 1",
        "40.8136, -96.7026, 2024-05-15, -6, 05:08:55, 19:38:02, 1",
        "42.0347, -93.62, 2024-05-15, -6, 04:53:21, 19:28:56, 10",
        "42.0347, -93.62, 2024-06-20, -6, 04:38:51, 19:53:37, 10",
        "40.8136, -96.7026, 2024-05-15, -6, 05:08:56, 19:37:59, 10"
    })
    @DisplayName("Reda & Andreas Table A2.1 (verified), this formula within 1 s, an independent ephemeris within 10 s")
    void riseAndSet(
            double latitude, double longitude, LocalDate date, double offset, String rise, String set, double seconds) {
        assertThat(SunTimes.sunriseUtc(latitude, longitude, date).orElseThrow() * 60 + offset * 3600)
                .isCloseTo(LocalTime.parse(rise).toNanoOfDay() / 1e9, within(seconds));
        assertThat(SunTimes.sunsetUtc(latitude, longitude, date).orElseThrow() * 60 + offset * 3600)
                .isCloseTo(LocalTime.parse(set).toNanoOfDay() / 1e9, within(seconds));
    }

    @Test
    @DisplayName("Julian day of 1957-10-4.81 is 2436116.31 (Meeus example 7.a, memory)")
    void julianDay() {
        assertPrinted(Sun.julianDay(LocalDate.of(1957, 10, 4)) + .81, "2436116.31");
    }

    @Test
    @DisplayName("13 October 1992: declination −7.785°, equation of time +13.71 min (Meeus 25.a and 28.b, memory)")
    void meeus() {
        Sun sun = Sun.at(Sun.julianDay(LocalDate.of(1992, 10, 13)));
        assertPrinted(Math.toDegrees(sun.declination()), "-7.785");
        assertPrinted(sun.equationOfTimeMinutes(), "13.71");
    }

    @Test
    @DisplayName("17 October 2003, NREL: azimuth 194.34024, zenith 50.11162 less refraction and parallax (verified)")
    void nrelCase() {
        Answer answer = SunElevation.FIGURE.answer(Map.of(
                "latitude", "39.742476",
                "longitude", "-105.1786",
                "date", "2003-10-17",
                "time", "12:30:30",
                "utc_offset_h", "-7"));
        assertThat(answer.number("azimuth_deg")).isCloseTo(194.34024, within(.005));
        assertThat(answer.number("elevation_deg")).isCloseTo(90 - 50.11162, within(.02));
    }

    @Test
    @DisplayName("A polar day has no times and 24 hours, a polar night none")
    void polar() {
        Answer day = at("78", "15", "2024-06-20", "1");
        assertThat(day.word("sunrise")).isEqualTo("none");
        assertThat(day.number("day_length_h")).isEqualTo(24);
        Answer night = at("78", "15", "2024-12-20", "1");
        assertThat(night.number("day_length_h")).isZero();
        assertThat(night.cautions()).contains("The sun does not rise that day.");
        assertThat(at("90", "0", "2024-06-20", "0").word("sunset")).isEqualTo("none");
    }

    @Test
    @DisplayName("By the clock of another place the times may fall on the next day, which is said")
    void otherClock() {
        Answer answer = at("42.0347", "-93.62", "2024-05-15", "0");
        assertThat(answer.word("sunset")).isEqualTo("01:29");
        assertThat(answer.cautions()).contains("By this clock the sunset falls on the next day.");
    }

    @Test
    @DisplayName("Where the clock is a day ahead of the sun, noon stays on the date asked for")
    void dateLine() {
        assertThat(at("-21.2", "-175.2", "2024-05-15", "13").number("sunrise_h"))
                .isBetween(6.0, 8.0);
        assertThat(at("-17.8", "178", "2024-05-15", "12").number("sunrise_h")).isBetween(6.0, 7.0);
    }

    @ParameterizedTest
    @CsvSource({"2023-02-29", "15.5.2024", "1850-01-01", "tomorrow"})
    @DisplayName("A date that is none is refused in one sentence")
    void badDate(String date) {
        assertThatThrownBy(() -> at("42", "-93", date, "-6"))
                .isInstanceOf(FigureInputException.class)
                .hasMessage("date is '" + date + "'; expected a date of the years 1900 to 2100, such as 2024-05-15");
    }

    @ParameterizedTest
    @CsvSource({"1439.6, 00:00", "-31, 23:29", "293.34, 04:53", "1529, 01:29"})
    @DisplayName("Minutes are rounded to the nearest and wrapped to the day")
    void clock(double minutes, String shown) {
        assertThat(SunTimes.clock(minutes)).isEqualTo(shown);
    }

    private static Answer at(String latitude, String longitude, String date, String offset) {
        return SunTimes.FIGURE.answer(
                Map.of("latitude", latitude, "longitude", longitude, "date", date, "utc_offset_h", offset));
    }
}
