package plumbrow.documents.weather;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.documents.weather.WeatherText.Line;

/**
 * NOAA's GHCN-Daily: highest and lowest temperature [°C×10] and rain [mm×10] of days, in its three forms: the fixed months of a .dly
 * file, the lines of a year file (station, date, element, value, flags), and the table with a heading for each element.
 *
 * A value with a quality flag failed a check and is missing. Only days with all three are kept.
 *
 * Source: readme of the data set (value from memory).
 */
final class DailyRecords {
    private static final Pattern MONTH = Pattern.compile("[A-Z]{2}[A-Z0-9]{9}\\d{6}[A-Z]{4}.*");
    private static final Pattern LINE = Pattern.compile("[A-Z]{2}[A-Z0-9]{9},\\d{8},[A-Z0-9]{4},-?\\d+,.*");
    private static final int VALUES_FROM = 21;
    private static final int VALUE_WIDTH = 8;

    private final Map<LocalDate, Map<String, Double>> days = new TreeMap<>();
    private int flagged;

    private DailyRecords() {}

    static boolean looksLike(String firstLine) {
        return MONTH.matcher(firstLine).matches() || LINE.matcher(firstLine).matches() || tabled(firstLine);
    }

    private static boolean tabled(String firstLine) {
        return firstLine.contains("TMAX") && firstLine.contains("TMIN") && firstLine.contains("PRCP");
    }

    static WeatherRead read(String text, WeatherAsked asked, String file) {
        DailyRecords records = new DailyRecords();
        String[] lines = text.split("\\R", -1);
        if (tabled(lines[0])) {
            records.table(text);
        } else {
            for (int i = 0; i < lines.length; i++) {
                if (LINE.matcher(lines[i]).matches()) {
                    records.line(i + 1, lines[i]);
                } else if (MONTH.matcher(lines[i]).matches()) {
                    records.month(i + 1, lines[i]);
                } else if (!lines[i].isBlank()) {
                    throw WeatherTrouble.line(i + 1, lines[i], "a line of GHCN-Daily: station, date, element, value");
                }
            }
        }
        return records.read(asked, file);
    }

    private WeatherRead read(WeatherAsked asked, String file) {
        List<WeatherDay> whole = new ArrayList<>();
        String source = asked.source() == null ? "GHCN-Daily, " + file : asked.source();
        int lacking = 0;
        for (Map.Entry<LocalDate, Map<String, Double>> day : days.entrySet()) {
            Map<String, Double> values = day.getValue();
            Double high = values.get("TMAX");
            Double low = values.get("TMIN");
            Double rain = values.get("PRCP");
            if (high == null || low == null || rain == null || low > high) {
                lacking++;
                continue;
            }
            whole.add(new WeatherDay(
                    asked.place(),
                    day.getKey(),
                    fahrenheit(low),
                    fahrenheit(high),
                    Math.rint(rain / 10 / WeatherText.MM_PER_INCH * 1000) / 1000,
                    source));
        }
        List<String> notes = new ArrayList<>();
        if (lacking > 0) {
            notes.add(lacking + " days lack rain or a temperature and were left out: unknown.");
        }
        if (flagged > 0) {
            notes.add(flagged + " values failed a check of the data set and count as missing.");
        }
        return new WeatherRead(
                "GHCN-Daily",
                new HourlyWeather(
                        asked.place(), asked.zone(), null, null, HourlyWeather.STATION_WIND_M, source, List.of()),
                whole,
                notes);
    }

    private static double fahrenheit(double tenths) {
        return Math.rint((tenths / 10 * 9 / 5 + 32) * 10) / 10;
    }

    private void put(LocalDate day, String element, double value, boolean bad) {
        if (bad) {
            flagged++;
            return;
        }
        days.computeIfAbsent(day, first -> new HashMap<>()).put(element, value);
    }

    private static boolean wanted(String element) {
        return element.equals("TMAX") || element.equals("TMIN") || element.equals("PRCP");
    }

    private void line(int number, String line) {
        String[] cells = line.split(",", -1);
        if (wanted(cells[2])) {
            put(
                    day(number, cells[1], DateTimeFormatter.BASIC_ISO_DATE),
                    cells[2],
                    Double.parseDouble(cells[3]),
                    cells.length > 5 && !cells[5].isBlank());
        }
    }

    private void month(int number, String line) {
        String element = line.substring(17, 21);
        if (!wanted(element)) {
            return;
        }
        LocalDate first = day(number, line.substring(11, 17) + "01", DateTimeFormatter.BASIC_ISO_DATE);
        for (int i = 0; i < first.lengthOfMonth(); i++) {
            int from = VALUES_FROM + i * VALUE_WIDTH;
            if (line.length() < from + 5) {
                return;
            }
            try {
                int value = Integer.parseInt(line.substring(from, from + 5).strip());
                if (value != -9999) {
                    boolean bad = line.length() > from + 6 && line.charAt(from + 6) != ' ';
                    put(first.plusDays(i), element, value, bad);
                }
            } catch (NumberFormatException fault) {
                throw WeatherTrouble.line(
                        number, line.substring(from, from + 5), "a value of five characters for each day");
            }
        }
    }

    private void table(String text) {
        for (Line line : WeatherText.csv(text)) {
            LocalDate day = day(line.number(), line.cell("DATE"), DateTimeFormatter.ISO_LOCAL_DATE);
            for (String element : List.of("TMAX", "TMIN", "PRCP")) {
                Double value = WeatherText.number(line.number(), line.cell(element), element, -9999, 99999);
                String[] flags = line.cell(element + "_ATTRIBUTES").split(",", -1);
                if (value != null) {
                    put(day, element, value, flags.length > 1 && !flags[1].isBlank());
                }
            }
        }
    }

    private static LocalDate day(int number, String text, DateTimeFormatter form) {
        try {
            return LocalDate.parse(text, form);
        } catch (DateTimeException fault) {
            throw WeatherTrouble.line(number, text, "a day that there is");
        }
    }
}
