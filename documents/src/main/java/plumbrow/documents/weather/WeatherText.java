package plumbrow.documents.weather;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.science.weather.AirMoisture;

/** Cells of weather files, and what several of them have in common. */
final class WeatherText {
    static final double MPH_PER_M_S = 2.2369363;
    static final double MPH_PER_KM_H = MPH_PER_M_S / 3.6;
    static final double MM_PER_INCH = 25.4;
    private static final int MOST_LINES = 400_000;

    private WeatherText() {}

    /** A line of a CSV file by its headings. */
    record Line(int number, Map<String, Integer> places, List<String> cells) {
        /** A cell without blanks around it; empty where there is none. */
        String cell(String heading) {
            Integer place = places.get(heading.strip().toLowerCase(Locale.ROOT));
            return place == null || place >= cells.size()
                    ? ""
                    : cells.get(place).strip();
        }

        boolean has(String heading) {
            return places.containsKey(heading.strip().toLowerCase(Locale.ROOT));
        }
    }

    /** The lines under the header. */
    static List<Line> csv(String text) {
        List<Line> lines = new ArrayList<>();
        Map<String, Integer> places = new HashMap<>();
        int row = 0;
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            for (CsvRecord record : records) {
                row++;
                List<String> cells = record.getFields();
                if (row == 1) {
                    for (int i = 0; i < cells.size(); i++) {
                        places.putIfAbsent(cells.get(i).strip().toLowerCase(Locale.ROOT), i);
                    }
                } else if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
                    lines.add(new Line(row, places, cells));
                }
                if (row > MOST_LINES) {
                    throw new WeatherTrouble("The file has more than 400,000 lines; split it by years.");
                }
            }
        } catch (CsvParseException broken) {
            throw new WeatherTrouble("Line " + (row + 1) + " has a double quote out of place; expected cells parted by"
                    + " commas, each quoted one ended by a quote.");
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return lines;
    }

    /** A number; null for a blank. */
    static @Nullable Double number(int line, String cell, String what, double low, double high) {
        if (cell.isEmpty() || cell.equalsIgnoreCase("M") || cell.equalsIgnoreCase("NA") || cell.equals("-9999")) {
            return null;
        }
        double value;
        try {
            value = Double.parseDouble(cell);
        } catch (NumberFormatException fault) {
            throw WeatherTrouble.line(line, cell, what + " as a number, or a blank where it is missing");
        }
        if (!(value >= low && value <= high)) {
            throw WeatherTrouble.line(line, cell, what + " between " + (long) low + " and " + (long) high);
        }
        return value;
    }

    static @Nullable Double times(@Nullable Double value, double factor) {
        return value == null ? null : Double.valueOf(value * factor);
    }

    static @Nullable Double celsius(@Nullable Double fahrenheit) {
        return fahrenheit == null ? null : Double.valueOf((fahrenheit - 32) * 5 / 9);
    }

    /** Relative humidity [%]; null where either is. */
    static @Nullable Double humidity(@Nullable Double celsius, @Nullable Double dewPointC) {
        return celsius == null || dewPointC == null
                ? null
                : Double.valueOf(AirMoisture.humidityPct(celsius, dewPointC));
    }
}
