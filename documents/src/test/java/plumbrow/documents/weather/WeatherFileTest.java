package plumbrow.documents.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import plumbrow.advice.hours.WeatherHour;
import plumbrow.advice.weeds.WeatherDay;

/** Each kind of weather file, held to the lines that its documentation prints, and what is refused. */
class WeatherFileTest {
    private static final WeatherAsked ASKED = asked(Map.of());

    private static WeatherAsked asked(Map<String, String> columns) {
        return new WeatherAsked("IA: Story", ZoneId.of("America/Chicago"), null, null, null, 10, columns, null);
    }

    private static WeatherRead read(String text) {
        return read(text, ASKED);
    }

    private static WeatherRead read(String text, WeatherAsked asked) {
        return WeatherFile.read("file", text.getBytes(StandardCharsets.UTF_8), asked);
    }

    private static double of(@org.jspecify.annotations.Nullable Double value) {
        return Objects.requireNonNull(value);
    }

    /** NOAA ISD-Lite, format document; one line of it. */
    @Test
    void isd_lite_is_read_as_its_document_says() {
        WeatherRead read = read("""
                2024 05 15 18   244   106 10142   190    41     2     0 -9999
                2024 05 15 19 -9999 -9999 10140   200 -9999 -9999    -1 -9999
                """);
        assertThat(read.format()).isEqualTo("NOAA ISD-Lite");
        WeatherHour hour = read.weather().hours().get(0);
        assertThat(hour.begin()).isEqualTo(Instant.parse("2024-05-15T17:00:00Z"));
        assertThat(hour.forecast()).isFalse();
        assertThat(of(hour.temperatureC())).isEqualTo(24.4);
        assertThat(of(hour.humidityPct())).isCloseTo(41.8, within(.05));
        assertThat(of(hour.windMph())).isCloseTo(9.17, within(.005));
        assertThat(of(hour.windFromDeg())).isEqualTo(190);
        assertThat(of(hour.rainIn())).isZero();
        assertThat(of(hour.cloudPct())).isEqualTo(25);
        assertThat(hour.gustMph()).isNull();
        WeatherHour lacking = read.weather().hours().get(1);
        assertThat(lacking.temperatureC()).isNull();
        assertThat(lacking.windMph()).isNull();
        assertThat(lacking.humidityPct()).isNull();
        assertThat(lacking.trace()).isTrue();
        assertThat(read.notes()).anySatisfy(note -> assertThat(note).contains("1 of 2 hours lack wind"));
    }

    /** Local Climatological Data; 76 °F, dew point 51 °F give 41.6 % (computed). */
    @Test
    void local_climatological_data_keep_the_routine_report_of_an_hour() {
        String header = "STATION,DATE,REPORT_TYPE,SOURCE,HourlyDewPointTemperature,HourlyDryBulbTemperature,"
                + "HourlyPrecipitation,HourlySkyConditions,HourlyWindDirection,HourlyWindGustSpeed,HourlyWindSpeed\n";
        WeatherRead read = read(header
                + "72,2024-05-15T12:53:00,FM-15,7,51,76,0.00,FEW:02 40 SCT:04 60,190,,9\n"
                + "72,2024-05-15T13:10:00,FM-16,7,51,75,0.02,BKN:07 30,190,22,12\n"
                + "72,2024-05-15T13:53:00,FM-15,7,50s,74s,T,OVC:08 20,VRB,25,*\n"
                + "72,2024-05-15T23:59:00,SOD  ,6,,,,,,,\n");
        List<WeatherHour> hours = read.weather().hours();
        assertThat(hours).hasSize(2);
        // 12:53 standard time is of the hour that ends at 13:00, 19:00 UTC.
        assertThat(hours.get(0).begin()).isEqualTo(Instant.parse("2024-05-15T18:00:00Z"));
        assertThat(of(hours.get(0).humidityPct())).isCloseTo(41.6, within(.05));
        assertThat(of(hours.get(0).windMph())).isEqualTo(9);
        assertThat(of(hours.get(0).cloudPct())).isEqualTo(50);
        assertThat(hours.get(1).begin()).isEqualTo(Instant.parse("2024-05-15T19:00:00Z"));
        assertThat(of(hours.get(1).temperatureC())).isCloseTo((74 - 32) / 1.8, within(1e-9));
        assertThat(hours.get(1).windMph()).as("starred").isNull();
        assertThat(hours.get(1).windFromDeg()).as("VRB").isNull();
        assertThat(hours.get(1).trace()).isTrue();
        assertThat(of(hours.get(1).gustMph())).isEqualTo(25);
        assertThat(read.notes()).anySatisfy(note -> assertThat(note).contains("suspect"));
    }

    /** Forecast grid: a value holds for its interval, rain is spread over it. */
    @Test
    void a_layer_of_the_forecast_grid_goes_hour_by_hour() {
        WeatherRead read = read("""
                {"geometry": {"type": "Polygon", "coordinates": [[[-93.7,42.0],[-93.6,42.0],[-93.6,42.1],[-93.7,42.1]]]},
                 "properties": {"updateTime": "2024-05-15T11:00:00+00:00",
                  "temperature": {"uom": "wmoUnit:degC", "values": [{"validTime": "2024-05-15T18:00:00+00:00/PT2H", "value": 21.5},
                     {"validTime": "2024-05-15T20:00:00+00:00/PT1H", "value": null}]},
                  "windSpeed": {"uom": "wmoUnit:km_h-1", "values": [{"validTime": "2024-05-15T18:00:00+00:00/PT3H", "value": 14.832}]},
                  "quantitativePrecipitation": {"uom": "wmoUnit:mm", "values": [{"validTime": "2024-05-15T18:00:00+00:00/PT3H", "value": 7.62}]}}}""");
        List<WeatherHour> hours = read.weather().hours();
        assertThat(hours).hasSize(3).allSatisfy(hour -> {
            assertThat(of(hour.windMph())).isCloseTo(9.22, within(.005));
            assertThat(of(hour.rainIn())).isCloseTo(.1, within(1e-9));
            assertThat(hour.forecast()).isTrue();
        });
        assertThat(hours.get(0).begin()).isEqualTo(Instant.parse("2024-05-15T18:00:00Z"));
        assertThat(hours.get(2).temperatureC()).as("null is missing").isNull();
        assertThat(of(read.weather().latitude())).isCloseTo(42.05, within(1e-9));
    }

    @Test
    void the_hourly_forecast_takes_the_higher_wind_of_its_words() {
        WeatherRead read = read("""
                {"properties": {"generatedAt": "2024-05-15T11:00:00+00:00", "periods": [
                  {"startTime": "2024-05-15T13:00:00-05:00", "temperature": 71, "temperatureUnit": "F",
                   "windSpeed": "5 to 10 mph", "windDirection": "NW", "probabilityOfPrecipitation": {"unitCode": "wmoUnit:percent", "value": 20},
                   "dewpoint": {"unitCode": "wmoUnit:degC", "value": 9}, "relativeHumidity": {"unitCode": "wmoUnit:percent", "value": 48}}]}}""");
        WeatherHour hour = read.weather().hours().get(0);
        assertThat(hour.begin()).isEqualTo(Instant.parse("2024-05-15T18:00:00Z"));
        assertThat(of(hour.windMph())).isEqualTo(10);
        assertThat(of(hour.windFromDeg())).isEqualTo(315);
        assertThat(of(hour.rainChancePct())).isEqualTo(20);
        assertThat(hour.rainIn()).isNull();
    }

    @Test
    void a_plain_csv_is_read_by_its_own_headings_or_by_a_map() {
        WeatherRead own =
                read("time_ending,temperature_f,humidity_pct,wind_mph,rain_in\n2026-05-04 13:00,68,50,7.5,\n");
        WeatherHour hour = own.weather().hours().get(0);
        assertThat(hour.begin()).as("12 to 13 Central standard time").isEqualTo(Instant.parse("2026-05-04T18:00:00Z"));
        assertThat(of(hour.temperatureC())).isCloseTo(20, within(1e-9));
        assertThat(hour.rainIn()).as("blank is missing").isNull();
        WeatherRead mapped = read(
                "year,month,day,hr,dry,dew,u,mm\n2001,5,4,24,20,9.26,4,2.54\n",
                asked(Map.of(
                        "hour_ending",
                        "hr",
                        "temperature_c",
                        "dry",
                        "dew_point_c",
                        "dew",
                        "wind_m_s",
                        "u",
                        "rain_mm",
                        "mm")));
        WeatherHour last = mapped.weather().hours().get(0);
        assertThat(last.begin()).isEqualTo(Instant.parse("2001-05-05T05:00:00Z"));
        assertThat(of(last.humidityPct())).isCloseTo(50, within(.05));
        assertThat(of(last.windMph())).isCloseTo(8.95, within(.005));
        assertThat(of(last.rainIn())).isCloseTo(.1, within(1e-9));
    }

    @Test
    void ghcn_daily_gives_whole_days_only_in_all_three_forms() {
        List<WeatherDay> days = read("""
                USW00094846,20240515,TMAX,244,,,W,
                USW00094846,20240515,TMIN,106,,,W,
                USW00094846,20240515,PRCP,25,,,W,
                USW00094846,20240516,TMAX,250,,I,W,
                USW00094846,20240516,TMIN,100,,,W,
                USW00094846,20240516,PRCP,0,,,W,
                """).days();
        assertThat(days).singleElement().satisfies(day -> {
            assertThat(day.date()).isEqualTo(LocalDate.of(2024, 5, 15));
            assertThat(day.highF()).isEqualTo(75.9);
            assertThat(day.lowF()).isEqualTo(51.1);
            assertThat(day.rainIn()).isCloseTo(.098, within(1e-9));
        });
        assertThat(read("""
                STATION,DATE,PRCP,PRCP_ATTRIBUTES,TMAX,TMIN
                USW1,2024-05-15,25,",,W",244,106
                USW1,2024-05-16,25,",D,W",244,106
                """).days())
                .isEqualTo(days.stream()
                        .map(day -> new WeatherDay(
                                day.place(), day.date(), day.lowF(), day.highF(), day.rainIn(), day.source()))
                        .toList());
        String value = "  244  W";
        String month = "USW00094846202405TMAX" + value.repeat(31) + "\nUSW00094846202405TMIN" + "  106  W".repeat(31)
                + "\nUSW00094846202405PRCP" + "-9999   ".repeat(14) + "   25  W" + "-9999   ".repeat(16) + "\n";
        assertThat(read(month).days()).isEqualTo(days);
    }

    @Test
    void what_is_no_weather_is_refused_in_a_sentence() {
        assertThatThrownBy(() -> read("")).isInstanceOf(WeatherTrouble.class).hasMessageContaining("is empty");
        assertThatThrownBy(() -> read("field,crop\nNorth,corn\n"))
                .isInstanceOf(WeatherTrouble.class)
                .hasMessageContaining("No heading says when an hour is");
        assertThatThrownBy(() -> read("time_ending,wind_mph\n2026-05-04 13:00,breezy\n"))
                .hasMessageContaining("Line 2 has 'breezy'; expected wind_mph as a number");
        assertThatThrownBy(() -> read("time_ending,wind_mph\n2026-05-04 13:00,900\n"))
                .hasMessageContaining("between 0 and 250");
        assertThatThrownBy(() -> read("time_ending,wind_mph\n2026-05-04 13:20,5\n"))
                .hasMessageContaining("full hour");
        assertThatThrownBy(() -> read("time_ending,wind_mph\n2026-05-04 13:00,5\n2026-05-04 13:00,6\n"))
                .hasMessageContaining("Lines 2 and 3 are of the same hour");
        assertThatThrownBy(() -> read("time_ending,wind_mph\n2026-05-04 13:00,5\n", asked(Map.of("gale", "wind_mph"))))
                .hasMessageContaining("There is no 'gale' of an hour");
        assertThatThrownBy(() -> read("time_ending,wind_mph\n2026-05-04 13:00,5\n", asked(Map.of("gust_mph", "Böen"))))
                .hasMessageContaining("no heading 'Böen'");
        assertThatThrownBy(() -> read(
                        "{\"properties\": {\"windSpeed\": {\"uom\": \"wmoUnit:knots\", \"values\": [{\"validTime\":"
                                + " \"2024-05-15T18:00:00+00:00/PT1H\", \"value\": 3}]}}}"))
                .hasMessageContaining("the unit 'wmoUnit:knots'");
        assertThatThrownBy(() -> read("{\"properties\": ")).hasMessageContaining("is no JSON");
        assertThatThrownBy(() -> WeatherFile.read("x.gz", new byte[] {0x1f, (byte) 0x8b, 8, 0}, ASKED))
                .isInstanceOf(WeatherTrouble.class)
                .hasMessageContaining("no text in UTF-8");
    }
}
