package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The decision table of all gates in one file, and that it is whole: each gate clear, exactly at its limit, just beyond it,
 * and unknown for each value that it needs. What a gate needs is found by forgetting every value in turn, so that a gate
 * which comes to need one more lacks a row here.
 */
class DecisionTableTest {
    /** Their measured value is that of a substance of the reference data, which no edit brings exactly to the limit. */
    private static final Set<String> NEVER_EXACTLY_AT = Set.of(
            "leaching", "bees", "birds-and-mammals", "vapour-drift", "drift-to-water", "exclusion-zone", "notice");

    /** What remains is conditional at best: own acres only, what is noted around, what the label asks. */
    private static final Set<String> NEVER_CLEAR = Set.of("right-to-save", "drift-to-neighbours", "chemigation");

    private static final List<Row> ROWS = rows();

    private record Row(String gate, String kind, @Nullable String edits, Standing standing, boolean silent) {
        static Row of(String line) {
            String[] cells = Arrays.stream(line.split("\\|")).map(String::strip).toArray(String[]::new);
            boolean silent = cells[3].equals("SILENT");
            return new Row(
                    cells[0],
                    cells[1],
                    cells[2].equals("-") ? null : cells[2],
                    silent ? Standing.NOTHING_ASKED : Standing.valueOf(cells[3]),
                    silent);
        }
    }

    @TestFactory
    Stream<DynamicTest> eachRowHolds() {
        return ROWS.stream()
                .map(row ->
                        DynamicTest.dynamicTest(row.gate() + ", " + row.kind() + ": " + row.edits(), () -> holds(row)));
    }

    @TestFactory
    Stream<DynamicTest> eachGateHasEveryKindOfRow() {
        return Gates.all().stream().map(gate -> DynamicTest.dynamicTest(gate.id(), () -> whole(gate, ROWS)));
    }

    /** The test of the tests: a table from which any row of the unknown is taken away is found wanting. */
    @TestFactory
    Stream<DynamicTest> aRowTakenAwayIsMissed() {
        return Stream.of("re-entry", "height", "plant-back", "setback-water", "refuge-acres")
                .map(id -> DynamicTest.dynamicTest(id, () -> {
                    Gate gate = gate(id);
                    List<Row> without = new ArrayList<>(ROWS);
                    without.removeIf(row -> row.gate().equals(id) && row.kind().equals("unknown"));
                    assertThat(missing(gate, without)).isNotEmpty();
                }));
    }

    private static void holds(Row row) {
        List<Finding> findings = Decides.line(
                row.gate(),
                row.edits(),
                row.silent() ? "SILENT" : row.standing().name());
        Set<Standing> fits = switch (row.kind()) {
            case "silent" -> Set.of(Standing.NOTHING_ASKED);
            case "clear", "at" -> Set.of(Standing.CLEAR);
            case "beyond" -> Set.of(Standing.BARRED, Standing.CONDITIONAL);
            case "unknown" -> Set.of(Standing.UNKNOWN);
            default -> throw new IllegalArgumentException(row.kind());
        };
        assertThat(fits).contains(Gates.standing(findings));
    }

    private static void whole(Gate gate, List<Row> table) {
        List<Row> rows = of(gate, table);
        assertThat(rows)
                .as("clear")
                .anyMatch(row -> NEVER_CLEAR.contains(gate.id()) || row.silent() || row.standing() == Standing.CLEAR);
        boolean asksForReadingOnly =
                rows.stream().noneMatch(row -> !row.silent() && row.standing() != Standing.UNKNOWN);
        assertThat(asksForReadingOnly
                        || rows.stream().anyMatch(row -> row.kind().equals("beyond")))
                .as("beyond")
                .isTrue();
        boolean measures = rows.stream()
                .anyMatch(row -> findings(gate, row).stream().anyMatch(finding -> finding.limit() != null));
        assertThat(!measures
                        || NEVER_EXACTLY_AT.contains(gate.id())
                        || rows.stream().filter(row -> row.kind().equals("at")).anyMatch(row -> exactlyAt(gate, row)))
                .as("exactly at the limit")
                .isTrue();
        assertThat(missing(gate, table)).as("unknown for each value it needs").isEmpty();
    }

    /** The values that the gate needs in some row of the table and that no row forgets. */
    private static List<String> missing(Gate gate, List<Row> table) {
        List<Row> rows = of(gate, table);
        List<String> forgotten = rows.stream()
                .filter(row -> row.kind().equals("unknown"))
                .flatMap(
                        row -> Arrays.stream(Objects.requireNonNull(row.edits()).split(";")))
                .map(String::strip)
                .toList();
        return rows.stream()
                .filter(row -> row.standing() != Standing.UNKNOWN)
                .flatMap(row -> Needed.PARTS.stream().flatMap(part -> Needed.of(gate, row.edits(), part).stream()))
                .distinct()
                .filter(value -> !forgotten.contains(value))
                .toList();
    }

    private static boolean exactlyAt(Gate gate, Row row) {
        return findings(gate, row).stream()
                .anyMatch(finding ->
                        finding.distance().isPresent() && finding.distance().getAsDouble() < 1e-9);
    }

    private static List<Finding> findings(Gate gate, Row row) {
        return Edits.apply(WholeLabel.scene(), row.edits()).findings(gate);
    }

    private static List<Row> of(Gate gate, List<Row> table) {
        return table.stream().filter(row -> row.gate().equals(gate.id())).toList();
    }

    private static Gate gate(String id) {
        return Gates.all().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<Row> rows() {
        try (InputStream in = Objects.requireNonNull(DecisionTableTest.class.getResourceAsStream("decisions.txt"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(Row::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
