package plumbrow.documents.strips;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.strips.Strip;
import plumbrow.science.trials.StripYield;

/**
 * A CSV of harvested strips, a line a strip, with headings as they are or mapped to these keys:
 *
 *   treatment, block                             as the grower calls them
 *   yield_bu_ac                                  at standard moisture or, with moisture_pct, as weighed; or
 *   weight_lb, moisture_pct, length_ft, width_ft of the strip as cut
 *   place                                        of the strip across the field, in strips or feet (may be left out)
 *
 * Cells are parted by commas or semicolons; numbers have a point.
 */
public final class StripFile {
    /** The keys, in order. */
    public static final List<String> KEYS =
            List.of("treatment", "block", "yield_bu_ac", "weight_lb", "moisture_pct", "length_ft", "width_ft", "place");

    private static final int MOST_BYTES = 10_000_000;
    private static final double MOST_BU_AC = 1000;

    private final Crop crop;
    private final Map<String, Integer> places = new HashMap<>();

    private StripFile(Crop crop) {
        this.crop = crop;
    }

    /**
     * The strips of a file.
     *
     * @param columns from key to heading, for headings that are not the keys themselves
     * @throws StripTrouble with a sentence, where it can't be taken in whole
     */
    public static List<Strip> read(byte[] file, Crop crop, Map<String, String> columns) {
        if (file.length > MOST_BYTES) {
            throw new StripTrouble(
                    "The file has " + file.length / 1_000_000
                            + " MB; expected a line a strip, at most 10 MB. Points of a yield monitor are averaged by strip first.");
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file))
                    .toString();
        } catch (CharacterCodingException other) {
            throw new StripTrouble("The file is no text in UTF-8; expected a CSV saved as UTF-8, not a spreadsheet.");
        }
        return new StripFile(crop).read(text.startsWith("\uFEFF") ? text.substring(1) : text, columns);
    }

    private List<Strip> read(String text, Map<String, String> columns) {
        String head = text.lines().findFirst().orElse("");
        char part = head.indexOf(';') >= 0 && head.indexOf(',') < 0 ? ';' : ',';
        List<Strip> strips = new ArrayList<>();
        int row = 0;
        int cells = 0;
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .fieldSeparator(part)
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            for (CsvRecord record : records) {
                row++;
                List<String> line =
                        record.getFields().stream().map(String::strip).toList();
                if (row == 1) {
                    cells = line.size();
                    head(line, columns);
                } else if (line.stream().anyMatch(cell -> !cell.isEmpty())) {
                    if (line.size() > cells) {
                        throw new StripTrouble("Line " + row + " has " + line.size() + " cells and the headings are "
                                + cells + "; expected as many. A comma in a number parts it in two: write 201.5.");
                    }
                    strips.add(strip(row, line));
                }
            }
        } catch (CsvParseException broken) {
            throw new StripTrouble(
                    "Line " + (row + 1) + " has a double quote out of place; expected cells parted by commas,"
                            + " each quoted one ended by a quote.");
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        if (strips.isEmpty()) {
            throw new StripTrouble("The file holds no strip; expected a line of headings and a line a strip.");
        }
        return strips;
    }

    private void head(List<String> headings, Map<String, String> columns) {
        Map<String, Integer> at = new LinkedHashMap<>();
        for (int i = 0; i < headings.size(); i++) {
            if (at.put(headings.get(i).toLowerCase(Locale.ROOT), i) != null) {
                throw new StripTrouble("The heading '" + headings.get(i) + "' stands twice; expected each once.");
            }
        }
        columns.forEach((key, heading) -> {
            if (!KEYS.contains(key)) {
                throw new StripTrouble(
                        "There is no '" + key + "' of a strip; expected one of " + String.join(", ", KEYS) + ".");
            }
            Integer place = at.get(heading.strip().toLowerCase(Locale.ROOT));
            if (place == null) {
                throw new StripTrouble("The file has no heading '" + heading + "'; its headings are "
                        + String.join(", ", headings) + ".");
            }
            places.put(key, place);
        });
        KEYS.stream()
                .filter(at::containsKey)
                .forEach(key -> places.putIfAbsent(key, Objects.requireNonNull(at.get(key))));
        boolean weighed = List.of("weight_lb", "moisture_pct", "length_ft", "width_ft").stream()
                .allMatch(places::containsKey);
        if (!places.containsKey("treatment")
                || !places.containsKey("block")
                || (!places.containsKey("yield_bu_ac") && !weighed)) {
            throw new StripTrouble("The headings are " + String.join(", ", headings)
                    + "; expected treatment, block and yield_bu_ac, or weight_lb, moisture_pct, length_ft and width_ft for the"
                    + " yield. Other headings are mapped with --column key=heading.");
        }
    }

    private Strip strip(int row, List<String> line) {
        return new Strip(
                name(row, line, "block"), name(row, line, "treatment"), harvested(row, line), place(row, line));
    }

    private double harvested(int row, List<String> line) {
        Double given = number(row, line, "yield_bu_ac", 0, MOST_BU_AC);
        Double moisture = number(row, line, "moisture_pct", 0, 60);
        double standard = Harvest.standardMoisturePct(crop);
        if (given != null) {
            return moisture == null ? given : given * (100 - moisture) / (100 - standard);
        }
        Double weight = number(row, line, "weight_lb", 0, 1e6);
        Double length = number(row, line, "length_ft", 1, 1e5);
        Double width = number(row, line, "width_ft", 1, 1000);
        if (weight == null || moisture == null || length == null || width == null) {
            throw new StripTrouble(
                    "Line " + row + " has no yield; expected yield_bu_ac, or weight_lb, moisture_pct, length_ft"
                            + " and width_ft. Leave out the line of a strip that was lost.");
        }
        double yield = StripYield.buPerAcre(weight, moisture, standard, crop.poundsPerBushel(), length, width);
        if (yield > MOST_BU_AC) {
            throw StripTrouble.line(
                    row, weight + " lb", "a yield of at most 1,000 bu/ac; weight, length or width is off");
        }
        return yield;
    }

    private @Nullable Double place(int row, List<String> line) {
        return number(row, line, "place", -1e6, 1e6);
    }

    private String name(int row, List<String> line, String key) {
        String cell = cell(line, key);
        if (cell.isEmpty()) {
            throw new StripTrouble("Line " + row + " has no " + key + "; expected a name.");
        }
        return cell;
    }

    private @Nullable Double number(int row, List<String> line, String key, double low, double high) {
        String cell = cell(line, key);
        if (cell.isEmpty()) {
            return null;
        }
        double value;
        try {
            value = Double.parseDouble(cell);
        } catch (NumberFormatException fault) {
            throw StripTrouble.line(row, cell, key + " as a number with a point and no unit, such as 201.5");
        }
        if (!(value >= low && value <= high)) {
            throw StripTrouble.line(row, cell, key + " from " + (long) low + " to " + (long) high);
        }
        return value;
    }

    private String cell(List<String> line, String key) {
        Integer at = places.get(key);
        return at == null || at >= line.size() ? "" : line.get(at);
    }
}
