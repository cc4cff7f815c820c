package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcOperations;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.hours.WeatherHour;
import plumbrow.documents.weather.WeatherRead;

/** Hourly weather, file by file. */
final class WeatherRows {
    private static final long SECONDS_PER_HOUR = 3600;

    private final JdbcOperations sql;

    WeatherRows(JdbcOperations sql) {
        this.sql = sql;
    }

    /** The number of a file that was taken in for a place already. */
    Optional<Integer> already(String place, String sha256) {
        return sql
                .query(
                        "SELECT number FROM weather_file WHERE place = ? AND sha256 = ?",
                        (row, number) -> row.getInt(1),
                        place,
                        sha256)
                .stream()
                .findFirst();
    }

    int add(String name, String sha256, WeatherRead read, Instant at) {
        HourlyWeather weather = read.weather();
        Integer next = sql.queryForObject("SELECT coalesce(max(number), 0) + 1 FROM weather_file", Integer.class);
        int number = next == null ? 1 : next;
        sql.update(
                "INSERT INTO weather_file (number, place, name, format, zone, latitude, longitude, wind_height_m, source,"
                        + " sha256, taken_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                number,
                weather.place(),
                name,
                read.format(),
                weather.zone().getId(),
                weather.latitude(),
                weather.longitude(),
                weather.windHeightM(),
                weather.source(),
                sha256,
                at.toString());
        List<@Nullable Object[]> rows = new ArrayList<>();
        for (WeatherHour hour : weather.hours()) {
            rows.add(new @Nullable Object[] {
                number,
                hour.begin().getEpochSecond() / SECONDS_PER_HOUR,
                hour.forecast() ? 1 : 0,
                hour.temperatureC(),
                hour.humidityPct(),
                hour.windMph(),
                hour.gustMph(),
                hour.windFromDeg(),
                hour.rainIn(),
                hour.trace() ? 1 : 0,
                hour.rainChancePct(),
                hour.cloudPct()
            });
        }
        sql.batchUpdate(
                "INSERT INTO weather_hour (file, begin_h, forecast, temperature_c, humidity_pct, wind_mph, gust_mph,"
                        + " wind_from_deg, rain_in, trace, rain_chance_pct, cloud_pct) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                rows);
        return number;
    }

    /** Every file, in the order in which they came. */
    List<WeatherOnFile> files() {
        return sql.query(
                """
                SELECT number, place, name, format, source, taken_at,
                    (SELECT count(*) FROM weather_hour WHERE file = number),
                    (SELECT min(begin_h) FROM weather_hour WHERE file = number),
                    (SELECT max(begin_h) FROM weather_hour WHERE file = number)
                FROM weather_file ORDER BY number""",
                (row, n) -> new WeatherOnFile(
                        row.getInt(1),
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        Instant.parse(row.getString(6)),
                        row.getInt(7),
                        Instant.ofEpochSecond(row.getLong(8) * SECONDS_PER_HOUR),
                        Instant.ofEpochSecond((row.getLong(9) + 1) * SECONDS_PER_HOUR)));
    }

    /** What is another text after every file that came or went; a number is given once. */
    String version() {
        return String.valueOf(
                sql.queryForObject("SELECT group_concat(number || ' ' || sha256) FROM weather_file", String.class));
    }

    /** Takes a file out again with its hours; whether there was one. */
    boolean remove(int number) {
        sql.update("DELETE FROM weather_hour WHERE file = ?", number);
        return sql.update("DELETE FROM weather_file WHERE number = ?", number) > 0;
    }

    /** The files of a place with their hours, in the order in which they came. */
    List<HourlyWeather> of(String place) {
        return sql.query(
                "SELECT number, place, zone, latitude, longitude, wind_height_m, source FROM weather_file WHERE place = ?"
                        + " ORDER BY number",
                (row, n) -> new HourlyWeather(
                        row.getString(2),
                        ZoneId.of(row.getString(3)),
                        maybe(row, 4),
                        maybe(row, 5),
                        row.getDouble(6),
                        row.getString(7),
                        hours(row.getInt(1))),
                place);
    }

    private List<WeatherHour> hours(int file) {
        return sql.query(
                "SELECT begin_h, forecast, temperature_c, humidity_pct, wind_mph, gust_mph, wind_from_deg, rain_in, trace,"
                        + " rain_chance_pct, cloud_pct FROM weather_hour WHERE file = ? ORDER BY begin_h",
                (row, n) -> new WeatherHour(
                        Instant.ofEpochSecond(row.getLong(1) * SECONDS_PER_HOUR),
                        row.getInt(2) == 1,
                        maybe(row, 3),
                        maybe(row, 4),
                        maybe(row, 5),
                        maybe(row, 6),
                        maybe(row, 7),
                        maybe(row, 8),
                        row.getInt(9) == 1,
                        maybe(row, 10),
                        maybe(row, 11)),
                file);
    }

    private static @Nullable Double maybe(ResultSet row, int column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? null : Double.valueOf(value);
    }
}
