package plumbrow.documents.weather;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.hours.WeatherHour;

/**
 * NOAA's ISD-Lite: a line an hour, UTC, numbers parted by blanks, −9999 for missing.
 *
 *   year month day hour, air [°C×10], dew point [°C×10], pressure [hPa×10], direction [°], wind [m/s×10], sky, rain of 1 h and
 *   of 6 h [mm×10]
 *
 * A report at an hour is of the hour that ends there. A trace of rain is −1 (value from memory). Sky 0 to 8 are eighths covered.
 *
 * Source: format document of 20 June 2006 and the technical document of ISD-Lite.
 */
final class IsdLite {
    private static final Pattern LINE = Pattern.compile("\\s*\\d{4}(\\s+-?\\d+){11}\\s*");
    private static final int MISSING = -9999;

    private IsdLite() {}

    static boolean looksLike(String firstLine) {
        return LINE.matcher(firstLine).matches();
    }

    static WeatherRead read(String text, WeatherAsked asked, String file) {
        Map<Instant, WeatherHour> hours = new HashMap<>();
        String[] lines = text.split("\\R", -1);
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].isBlank()) {
                continue;
            }
            if (!looksLike(lines[i])) {
                throw WeatherTrouble.line(
                        i + 1, lines[i], "twelve whole numbers parted by blanks, as ISD-Lite has them");
            }
            int[] cells = Pattern.compile("\\s+")
                    .splitAsStream(lines[i].strip())
                    .mapToInt(Integer::parseInt)
                    .toArray();
            Instant begin;
            try {
                begin = LocalDateTime.of(cells[0], cells[1], cells[2], cells[3], 0)
                        .minusHours(1)
                        .toInstant(ZoneOffset.UTC);
            } catch (DateTimeException fault) {
                throw WeatherTrouble.line(i + 1, lines[i], "year, month, day and hour 0 to 23 first");
            }
            Double air = tenths(cells[4]);
            Double dewPoint = tenths(cells[5]);
            Double wind = tenths(cells[8]);
            Double rain = cells[10] == -1 ? Double.valueOf(0) : tenths(cells[10]);
            hours.put(
                    begin,
                    new WeatherHour(
                            begin,
                            false,
                            air,
                            WeatherText.humidity(air, dewPoint),
                            WeatherText.times(wind, WeatherText.MPH_PER_M_S),
                            null,
                            cells[7] == MISSING || cells[7] == 0 ? null : Double.valueOf(cells[7]),
                            WeatherText.times(rain, 1 / WeatherText.MM_PER_INCH),
                            cells[10] == -1,
                            null,
                            sky(cells[9])));
        }
        return WeatherRead.hours("NOAA ISD-Lite", asked, file, hours, List.of());
    }

    private static @Nullable Double tenths(int cell) {
        return cell == MISSING ? null : Double.valueOf(cell / 10.0);
    }

    private static @Nullable Double sky(int code) {
        return code >= 0 && code <= 8 ? Double.valueOf(code * 12.5) : code == 9 ? Double.valueOf(100) : null;
    }
}
