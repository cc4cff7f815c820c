package plumbrow.documents.workbook.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.ProgramSheet;
import plumbrow.documents.workbook.sheet.SpraySheet;
import plumbrow.documents.workbook.sheet.TillageSheet;

/**
 * A program as one thing: its row, and for each trip the row of the pass, how it is sprayed and how it is tilled. The cells that
 * name field, program and pass are no part of it, so that it can be copied under another name and onto another field.
 *
 * @param program cells of the sheet programs
 * @param trips in the order in which they are made
 */
public record ProgramDraft(Map<String, String> program, List<Trip> trips) {
    private static final String FIELD = "field";
    private static final String PROGRAM = "program";
    private static final String PASS = "pass";
    private static final String BASELINE = "baseline";
    private static final List<Sheet<?>> OF_PASSES = List.of(PassSheet.SHEET, SpraySheet.SHEET, TillageSheet.SHEET);

    public ProgramDraft {
        program = Collections.unmodifiableMap(new LinkedHashMap<>(program));
        trips = List.copyOf(trips);
    }

    /**
     * One trip over the field.
     *
     * @param pass cells of the sheet passes
     * @param spray cells of the sheet sprays; empty where it has no row there
     * @param tillage cells of the sheet tillage; empty where it has no row there
     */
    public record Trip(Map<String, String> pass, Map<String, String> spray, Map<String, String> tillage) {
        public Trip {
            pass = Collections.unmodifiableMap(new LinkedHashMap<>(pass));
            spray = Collections.unmodifiableMap(new LinkedHashMap<>(spray));
            tillage = Collections.unmodifiableMap(new LinkedHashMap<>(tillage));
        }

        /** The same with one cell of the pass otherwise; blank for an empty text. */
        public Trip withPass(String key, String text) {
            return new Trip(ProgramDraft.with(pass, key, text), spray, tillage);
        }

        /** The same with one cell of how it is sprayed otherwise. */
        public Trip withSpray(String key, String text) {
            return new Trip(pass, ProgramDraft.with(spray, key, text), tillage);
        }

        private Map<String, String> cells(Sheet<?> sheet) {
            return sheet.equals(PassSheet.SHEET) ? pass : sheet.equals(SpraySheet.SHEET) ? spray : tillage;
        }
    }

    /** A program of the season; empty where the field has none of that name. */
    public static Optional<ProgramDraft> of(Season season, String field, String name) {
        SeasonTables tables = SeasonTables.of(season);
        return tables.rows(ProgramSheet.SHEET).stream()
                .filter(row -> of(row, field, name))
                .findFirst()
                .map(row -> new ProgramDraft(bare(row), trips(tables, field, name)));
    }

    private static List<Trip> trips(SeasonTables tables, String field, String name) {
        List<Trip> trips = new ArrayList<>();
        for (Map<String, String> pass : tables.rows(PassSheet.SHEET)) {
            if (of(pass, field, name)) {
                String number = pass.getOrDefault(PASS, "");
                trips.add(new Trip(
                        bare(pass),
                        beside(tables, SpraySheet.SHEET, field, name, number),
                        beside(tables, TillageSheet.SHEET, field, name, number)));
            }
        }
        return trips;
    }

    private static Map<String, String> beside(
            SeasonTables tables, Sheet<?> sheet, String field, String name, String number) {
        return tables.rows(sheet).stream()
                .filter(row ->
                        of(row, field, name) && row.getOrDefault(PASS, "").equals(number))
                .findFirst()
                .map(ProgramDraft::bare)
                .orElse(Map.of());
    }

    private static boolean of(Map<String, String> row, String field, String name) {
        return row.getOrDefault(FIELD, "").equals(field)
                && row.getOrDefault(PROGRAM, "").equals(name);
    }

    private static Map<String, String> bare(Map<String, String> row) {
        Map<String, String> bare = new LinkedHashMap<>(row);
        List.of(FIELD, PROGRAM, PASS).forEach(bare::remove);
        return bare;
    }

    public boolean baseline() {
        return program.getOrDefault(BASELINE, "no").equals("yes");
    }

    public ProgramDraft withBaseline(boolean baseline) {
        return new ProgramDraft(with(program, BASELINE, baseline ? "yes" : "no"), trips);
    }

    public ProgramDraft withTrips(List<Trip> others) {
        return new ProgramDraft(program, others);
    }

    private static Map<String, String> with(Map<String, String> row, String key, String text) {
        Map<String, String> changed = new LinkedHashMap<>(row);
        if (text.isBlank()) {
            changed.remove(key);
        } else {
            changed.put(key, text.strip());
        }
        return changed;
    }

    /** The changes that put this program onto a field as one more. */
    public List<RowChange> added(String field, String name) {
        List<RowChange> changes = new ArrayList<>();
        changes.add(RowChange.add(ProgramSheet.SHEET.name(), named(program, field, name, 0)));
        changes.addAll(passes(field, name));
        return changes;
    }

    /**
     * The changes that put this program in the place of one of the season.
     *
     * @param before its name until now
     */
    public List<RowChange> instead(Season season, String field, String before, String name) {
        SeasonTables tables = SeasonTables.of(season);
        List<RowChange> changes = new ArrayList<>();
        rows(tables, ProgramSheet.SHEET, field, before)
                .forEach((at, row) -> changes.add(
                        RowChange.change(ProgramSheet.SHEET.name(), at, row, named(program, field, name, 0))));
        changes.addAll(withoutPasses(tables, field, before));
        changes.addAll(passes(field, name));
        return changes;
    }

    /** The changes that take a program out of the season with all that hangs on it. */
    public static List<RowChange> removed(Season season, String field, String name) {
        SeasonTables tables = SeasonTables.of(season);
        List<RowChange> changes = new ArrayList<>(withoutPasses(tables, field, name));
        rows(tables, ProgramSheet.SHEET, field, name)
                .forEach((at, row) -> changes.add(RowChange.remove(ProgramSheet.SHEET.name(), at, row)));
        return changes;
    }

    /**
     * The changes by which another program may become the baseline: a field has one.
     *
     * @param except the program that stays as it is; empty for none
     */
    public static List<RowChange> noLongerBaseline(Season season, String field, String except) {
        List<RowChange> changes = new ArrayList<>();
        List<Map<String, String>> programs = SeasonTables.of(season).rows(ProgramSheet.SHEET);
        for (int i = 0; i < programs.size(); i++) {
            Map<String, String> row = programs.get(i);
            if (row.getOrDefault(FIELD, "").equals(field)
                    && !row.getOrDefault(PROGRAM, "").equals(except)
                    && row.getOrDefault(BASELINE, "").equals("yes")) {
                changes.add(RowChange.change(ProgramSheet.SHEET.name(), i, row, with(row, BASELINE, "no")));
            }
        }
        return changes;
    }

    private static List<RowChange> withoutPasses(SeasonTables tables, String field, String name) {
        List<RowChange> changes = new ArrayList<>();
        for (Sheet<?> sheet : OF_PASSES) {
            List<RowChange> removed = new ArrayList<>();
            rows(tables, sheet, field, name).forEach((at, row) -> removed.add(RowChange.remove(sheet.name(), at, row)));
            Collections.reverse(removed);
            changes.addAll(removed);
        }
        return changes;
    }

    private static Map<Integer, Map<String, String>> rows(
            SeasonTables tables, Sheet<?> sheet, String field, String name) {
        Map<Integer, Map<String, String>> rows = new LinkedHashMap<>();
        List<Map<String, String>> all = tables.rows(sheet);
        for (int i = 0; i < all.size(); i++) {
            if (of(all.get(i), field, name)) {
                rows.put(i, all.get(i));
            }
        }
        return rows;
    }

    private List<RowChange> passes(String field, String name) {
        List<RowChange> changes = new ArrayList<>();
        for (int i = 0; i < trips.size(); i++) {
            for (Sheet<?> sheet : OF_PASSES) {
                Map<String, String> cells = trips.get(i).cells(sheet);
                if (!cells.isEmpty()) {
                    changes.add(RowChange.add(sheet.name(), named(cells, field, name, i + 1)));
                }
            }
        }
        return changes;
    }

    private static Map<String, String> named(Map<String, String> cells, String field, String name, int pass) {
        Map<String, String> row = new LinkedHashMap<>();
        row.put(FIELD, field);
        row.put(PROGRAM, name);
        if (pass > 0) {
            row.put(PASS, String.valueOf(pass));
        }
        row.putAll(cells);
        return row;
    }

    /** Which trip a change of {@link #added} or {@link #instead} is of, counted from 0; empty for the program's own row. */
    public static Optional<Integer> trip(RowChange change) {
        @Nullable Map<String, String> row = change.after();
        String number = row == null ? "" : row.getOrDefault(PASS, "");
        return number.isEmpty() ? Optional.empty() : Optional.of(Integer.parseInt(number) - 1);
    }
}
