package plumbrow.app.lookback;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.lookback.Decided;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.names.Near;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.text.TextRule;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.NumberKind;

/**
 * A harvest as it was typed, the same on the desk, by command and by program.
 *
 * @param typed by the name of the box
 * @param faults what keeps it from being written down, by the name of the box
 * @param harvest null where there is a fault
 */
public record HarvestEntry(
        Map<String, String> typed,
        Map<String, String> faults,
        @Nullable Harvest harvest) {
    public static final String FIELD = "field";
    public static final String PROGRAM = "program";
    public static final String STRIP = "strip";
    public static final String YIELD = "yield_bu_ac";
    public static final String MOISTURE = "moisture_pct";
    public static final String PRICE = "price_usd_bu";
    public static final String COST = "cost_usd_ac";
    public static final String WHO = "who";
    public static final String SOURCE = "source";

    private static final NumberKind BUSHELS = NumberKind.between(0, 1000);
    private static final NumberKind PERCENT = NumberKind.between(0, 60);
    private static final NumberKind DOLLARS = NumberKind.above(0).upTo(100);
    private static final NumberKind COSTS = NumberKind.between(0, 10_000);

    /** Nothing typed yet, and nothing to complain of. */
    public static HarvestEntry blank(Map<String, String> typed) {
        return new HarvestEntry(typed, Map.of(), null);
    }

    /**
     * Reads what was typed.
     *
     * @param season the season of the harvest year
     * @param decided every choice: where no program is named, the one chosen last grew on the field
     */
    public static HarvestEntry read(Season season, List<Decided> decided, Map<String, String> typed, Instant at) {
        Map<String, String> faults = new LinkedHashMap<>();
        List<String> fields = season.fields().stream().map(Field::name).toList();
        String field = found(typed, FIELD).orElse("");
        if (!fields.contains(field)) {
            fault(typed, faults, FIELD, "a field of " + season.year() + Near.suggested(field, fields));
        }
        boolean strip =
                List.of("yes", "true", "on").contains(found(typed, STRIP).orElse(""));
        String program = fields.contains(field) ? program(season, decided, typed, faults, field, strip) : "";
        Double yield = number(typed, faults, YIELD, BUSHELS, true);
        Double moisture = number(typed, faults, MOISTURE, PERCENT, false);
        Double price = number(typed, faults, PRICE, DOLLARS, false);
        Double cost = number(typed, faults, COST, COSTS, false);
        String who = words(typed, faults, WHO, TextRule.NAME, "who says so");
        String source =
                words(typed, faults, SOURCE, TextRule.PROSE, "where this stands: scale tickets, monitor, memory");
        return new HarvestEntry(
                Map.copyOf(typed),
                Map.copyOf(faults),
                faults.isEmpty() && yield != null
                        ? new Harvest(
                                season.year(), field, program, strip, yield, moisture, price, cost, who, at, source)
                        : null);
    }

    private static String program(
            Season season,
            List<Decided> decided,
            Map<String, String> typed,
            Map<String, String> faults,
            String field,
            boolean strip) {
        List<String> programs =
                season.programs(field).stream().map(Program::name).toList();
        String name = found(typed, PROGRAM).orElse("");
        if (name.isEmpty() && !strip) {
            name = decided.stream()
                    .filter(one -> one.year() == season.year() && one.field().equals(field))
                    .map(Decided::program)
                    .filter(programs::contains)
                    .reduce((one, later) -> later)
                    .orElse(programs.size() == 1 ? programs.get(0) : "");
        }
        if (!programs.contains(name)) {
            fault(
                    typed,
                    faults,
                    PROGRAM,
                    "the program that grew there: "
                            + (programs.isEmpty() ? "the field has none" : String.join(", ", programs)));
        }
        return name;
    }

    private static Optional<String> found(Map<String, String> typed, String box) {
        return Optional.of(typed.getOrDefault(box, "").strip()).filter(text -> !text.isEmpty());
    }

    private static void fault(Map<String, String> typed, Map<String, String> faults, String box, String expected) {
        faults.putIfAbsent(
                box,
                found(typed, box).map(text -> "Found “" + text + "”; expected ").orElse("Nothing there; expected ")
                        + expected
                        + (expected.endsWith("?") ? "" : "."));
    }

    private static @Nullable Double number(
            Map<String, String> typed, Map<String, String> faults, String box, Kind<Double> kind, boolean need) {
        Function<String, Double> read = text -> {
            try {
                return kind.read(new Cell.Written(text));
            } catch (Misread wrong) {
                fault(typed, faults, box, wrong.expected());
                return 0.0;
            }
        };
        Optional<String> text = found(typed, box);
        if (text.isEmpty() && need) {
            fault(typed, faults, box, kind.words());
        }
        return text.map(read).orElse(null);
    }

    private static String words(
            Map<String, String> typed, Map<String, String> faults, String box, TextRule rule, String what) {
        String text = found(typed, box).orElse("");
        if (text.isEmpty()) {
            fault(typed, faults, box, what);
        }
        rule.objection(text).ifPresent(expected -> fault(typed, faults, box, expected));
        return text;
    }

    public String text(String box) {
        return typed.getOrDefault(box, "");
    }

    public String fault(String box) {
        return faults.getOrDefault(box, "");
    }

    /** All faults in one sentence. */
    public String complaint() {
        return faults.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(one -> one.getKey() + ": " + one.getValue())
                .collect(Collectors.joining(" "));
    }
}
