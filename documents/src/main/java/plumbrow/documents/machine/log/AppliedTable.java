package plumbrow.documents.machine.log;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.ratemap.Metering;

/**
 * Reads a table of points as programs of machines export them: CSV, a line a point, with headings as in {@link #KEYS} or mapped to them.
 *
 * <p>The ground of a line is its area; else its distance times its width; else the way from the line before times its width. A line with rate
 * zero was not worked.
 */
public final class AppliedTable {
    /** The headings that are understood. */
    public static final List<String> KEYS = List.of(
            "time",
            "latitude",
            "longitude",
            "area_ac",
            "area_m2",
            "distance_ft",
            "distance_m",
            "width_ft",
            "width_m",
            "gal_ac",
            "l_ha",
            "lb_ac",
            "kg_ha",
            "seeds_ac",
            "seeds_ha",
            "product",
            "field",
            "task");

    private static final List<DateTimeFormatter> MOMENTS = List.of(
            DateTimeFormatter.ISO_LOCAL_DATE_TIME,
            DateTimeFormatter.ofPattern("yyyy-MM-dd H:mm[:ss]", Locale.US),
            DateTimeFormatter.ofPattern("M/d/yyyy H:mm[:ss]", Locale.US),
            DateTimeFormatter.ofPattern("M/d/yyyy h:mm[:ss] a", Locale.US));
    private static final double M_PER_FT = 0.3048;
    private static final double ACRES_PER_HECTARE = 10_000 / Metering.M2_PER_ACRE;
    private static final int MOST_LINES = 1_000_000;

    private final String file;
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private final Tally tally = new Tally();
    private final Map<String, Map<Metering, Double>> amounts = new LinkedHashMap<>();
    private final Map<String, String> said = new HashMap<>();
    private @Nullable LocalDateTime begun;
    private @Nullable LocalDateTime ended;

    private AppliedTable(String file) {
        this.file = file;
    }

    /**
     * What the table of a file adds up to.
     *
     * @param columns headings by key, for those that are of another name
     */
    public static MachineWork.Log read(Path path, Map<String, String> columns) {
        String name = String.valueOf(path.getFileName());
        try {
            if (Files.size(path) > LogFiles.MOST_BYTES) {
                throw new LogTrouble(name + " is larger than 64 MB; expected the table of one field.");
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
                    .toString();
            return new AppliedTable(name).read(text.replaceFirst("^\uFEFF", ""), columns);
        } catch (CharacterCodingException foreign) {
            throw new LogTrouble(name + " is not in UTF-8; save it as CSV in UTF-8.");
        } catch (IOException unreadable) {
            throw new LogTrouble(name + " can't be read from the disk.");
        }
    }

    private MachineWork.Log read(String text, Map<String, String> columns) {
        int row = 0;
        try (CsvReader<CsvRecord> lines = CsvReader.builder()
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            for (CsvRecord line : lines) {
                row++;
                if (row > MOST_LINES) {
                    throw new LogTrouble(file + " has more than a million lines; expected the table of one field.");
                }
                if (row == 1) {
                    map(line.getFields(), columns);
                } else if (line.getFields().stream().anyMatch(cell -> !cell.isBlank())) {
                    point(row, line.getFields());
                }
            }
        } catch (CsvParseException broken) {
            throw new LogTrouble(file + ", line " + (row + 1) + ": a double quote is out of place.");
        } catch (IOException impossible) {
            throw new LogTrouble(file + " can't be read.");
        }
        if (tally.squareMetres() == 0) {
            throw new LogTrouble(file + " holds no line on which anything was worked.");
        }
        return new MachineWork.Log(List.of(work()));
    }

    private MachineWork work() {
        List<MachineWork.Total> totals = new ArrayList<>();
        amounts.forEach((product, sums) -> sums.forEach((metering, amount) ->
                totals.add(new MachineWork.Total(product, metering, amount, "rate times ground, line by line"))));
        List<String> notes = new ArrayList<>();
        if (tally.gaps() > 0) {
            notes.add(tally.gaps() + " gaps of more than a minute or 100 m between lines count as not worked.");
        }
        LocalDateTime start = begun;
        LocalDateTime end = ended;
        return new MachineWork(
                said.getOrDefault("task", ""),
                said.getOrDefault("field", ""),
                "",
                start == null ? null : MachineWork.Moment.of(start),
                end == null ? null : MachineWork.Moment.of(end),
                tally.squareMetres() / Metering.M2_PER_ACRE,
                has("area_ac") || has("area_m2") ? "the areas of its lines" : "way times working width, line by line",
                totals,
                tally.spots(),
                notes);
    }

    private void map(List<String> headings, Map<String, String> columns) {
        Map<String, Integer> found = new HashMap<>();
        for (int i = 0; i < headings.size(); i++) {
            found.putIfAbsent(plain(headings.get(i)), i);
        }
        columns.forEach((key, heading) -> {
            if (!KEYS.contains(key)) {
                throw new LogTrouble("There is no '" + LogFiles.shown(key) + "' of a point; expected one of "
                        + String.join(", ", KEYS) + ".");
            }
            Integer place = found.get(plain(heading));
            if (place == null) {
                throw new LogTrouble(file + " has no heading '" + LogFiles.shown(heading) + "'; its headings are "
                        + LogFiles.shown(String.join(", ", headings)) + ".");
            }
            places.put(key, place);
        });
        KEYS.forEach(key -> {
            Integer place = found.get(key);
            if (place != null) {
                places.putIfAbsent(key, place);
            }
        });
        boolean placed = has("latitude") && has("longitude");
        boolean area = has("area_ac") || has("area_m2");
        boolean wide = has("width_ft") || has("width_m");
        boolean far = has("distance_ft") || has("distance_m");
        if (!area && !(wide && (far || (placed && has("time"))))) {
            throw new LogTrouble(file + " does not tell the ground that was worked; expected area_ac, or width_ft with"
                    + " distance_ft, or width_ft with time, latitude and longitude. Headings of another name are mapped with"
                    + " --columns width_ft=HEADING.");
        }
        if (KEYS.subList(KEYS.indexOf("gal_ac"), KEYS.indexOf("product")).stream()
                .noneMatch(this::has)) {
            throw new LogTrouble(file + " has no rate; expected one of gal_ac, l_ha, lb_ac, kg_ha, seeds_ac, seeds_ha."
                    + " Headings of another name are mapped with --columns gal_ac=HEADING.");
        }
    }

    private static String plain(String heading) {
        return heading.strip().toLowerCase(Locale.ROOT);
    }

    private boolean has(String key) {
        return places.containsKey(key);
    }

    private void point(int row, List<String> cells) {
        Metering metering = null;
        double perAcre = 0;
        for (Metering each : Metering.values()) {
            Double rate = rate(row, cells, each);
            if (rate != null) {
                metering = each;
                perAcre = rate;
            }
        }
        boolean works = metering != null && perAcre > 0;
        Double latitude = number(row, cells, "latitude", -90, 90);
        Double longitude = number(row, cells, "longitude", -180, 180);
        boolean placed = latitude != null && longitude != null && !(latitude == 0 && longitude == 0);
        double east = placed && longitude != null ? longitude : 0;
        double north = placed && latitude != null ? latitude : 0;
        LocalDateTime at = time(row, cells);
        double before = tally.squareMetres();
        Double ground = ground(row, cells);
        if (ground != null) {
            tally.addGround(east, north, works ? ground : 0);
        } else if (placed && at != null) {
            tally.add(new Tally.Point(at, east, north, works ? width(row, cells) : 0));
        }
        if (!works || metering == null) {
            return;
        }
        if (at != null) {
            begun = begun == null || at.isBefore(begun) ? at : begun;
            ended = ended == null || at.isAfter(ended) ? at : ended;
        }
        for (String key : List.of("task", "field")) {
            said.putIfAbsent(key, cell(cells, key));
        }
        double acres = (tally.squareMetres() - before) / Metering.M2_PER_ACRE;
        amounts.computeIfAbsent(cell(cells, "product"), none -> new LinkedHashMap<>())
                .merge(metering, perAcre * acres, Double::sum);
    }

    private @Nullable Double rate(int row, List<String> cells, Metering metering) {
        return switch (metering) {
            case VOLUME -> either(row, cells, "gal_ac", "l_ha", perHectare(FarmUnit.L, FarmUnit.GAL));
            case MASS -> either(row, cells, "lb_ac", "kg_ha", perHectare(FarmUnit.KG, FarmUnit.LB));
            case COUNT -> either(row, cells, "seeds_ac", "seeds_ha", 1 / ACRES_PER_HECTARE);
        };
    }

    private static double perHectare(FarmUnit metric, FarmUnit farm) {
        return new Amount(1, metric).in(farm).value() / ACRES_PER_HECTARE;
    }

    private @Nullable Double either(int row, List<String> cells, String key, String other, double factor) {
        Double value = number(row, cells, key, 0, 1e7);
        Double otherwise = value != null ? null : number(row, cells, other, 0, 1e7);
        return value != null ? value : otherwise == null ? null : Double.valueOf(otherwise * factor);
    }

    /** The ground that the line tells itself [m²]; null where it tells none. */
    private @Nullable Double ground(int row, List<String> cells) {
        Double area = either(row, cells, "area_m2", "area_ac", Metering.M2_PER_ACRE);
        if (area != null) {
            return area;
        }
        Double way = either(row, cells, "distance_m", "distance_ft", M_PER_FT);
        return way == null ? null : Double.valueOf(way * width(row, cells));
    }

    private double width(int row, List<String> cells) {
        Double width = either(row, cells, "width_m", "width_ft", M_PER_FT);
        return width == null ? 0 : width;
    }

    private @Nullable LocalDateTime time(int row, List<String> cells) {
        String written = cell(cells, "time");
        if (written.isEmpty()) {
            return null;
        }
        try {
            return OffsetDateTime.parse(written.replace(' ', 'T')).toLocalDateTime();
        } catch (DateTimeException noOffset) {
            for (DateTimeFormatter form : MOMENTS) {
                try {
                    return LocalDateTime.parse(written, form);
                } catch (DateTimeException other) {
                    // Perhaps it is written in the next form.
                }
            }
        }
        throw fault(row, "time", written, "a time such as 2026-05-20 14:03:10");
    }

    private @Nullable Double number(int row, List<String> cells, String key, double low, double high) {
        String written = cell(cells, key);
        if (written.isEmpty()) {
            return null;
        }
        try {
            double value = new BigDecimal(written).doubleValue();
            if (value >= low && value <= high) {
                return value;
            }
        } catch (NumberFormatException none) {
            // Said below.
        }
        throw fault(
                row,
                key,
                written,
                "a number with a point for decimals, from "
                        + BigDecimal.valueOf(low).stripTrailingZeros().toPlainString() + " to "
                        + BigDecimal.valueOf(high).stripTrailingZeros().toPlainString() + ", or a blank");
    }

    private LogTrouble fault(int row, String key, String written, String expected) {
        return new LogTrouble(file + ", line " + row + ": " + key + " is “" + LogFiles.shown(written) + "”; expected "
                + expected + ".");
    }

    private String cell(List<String> cells, String key) {
        Integer place = places.get(key);
        return place == null || place >= cells.size() ? "" : cells.get(place).strip();
    }
}
