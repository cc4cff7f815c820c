package plumbrow.documents.workbook.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.Fault;
import plumbrow.documents.workbook.edit.SeasonTables.Line;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.rule.Rules;
import plumbrow.documents.workbook.sheet.LogSheet;
import plumbrow.documents.workbook.sheet.SeasonSheet;
import plumbrow.documents.workbook.sheet.Sheets;

/**
 * Changes rows of a season, all of them or none. Each row is read as a workbook's would be and the whole season is held against
 * the workbook's rules; what was wrong with the season already is no objection to a change that leaves it alone.
 */
public final class SeasonEdit {
    private SeasonEdit() {}

    /**
     * The season with rows changed.
     *
     * @throws EditFaults with all that speaks against it
     * @throws RowGoneException where a row is not as the change takes it to be
     */
    public static Season of(Season season, List<RowChange> changes) {
        return of(season, SeasonTables.of(season), changes);
    }

    /**
     * A season begun with its first rows.
     *
     * @throws EditFaults with all that speaks against it
     */
    public static Season first(List<RowChange> rows) {
        return of(null, SeasonTables.empty(), rows);
    }

    private static Season of(@Nullable Season season, SeasonTables tables, List<RowChange> changes) {
        List<@Nullable Line> made = new ArrayList<>();
        List<EditFaults.Place> refused = new ArrayList<>();
        for (RowChange change : changes) {
            Sheet<?> sheet = sheet(change.table());
            if (sheet.name().equals(LogSheet.SHEET.name()) && change.before() != null) {
                refused.add(new EditFaults.Place(stays(change), made.size()));
                made.add(null);
            } else {
                made.add(apply(tables, sheet, change));
            }
        }
        if (!refused.isEmpty()) {
            throw new EditFaults(refused);
        }
        Found found = new Found();
        Tables read = tables.read(found);
        Rules.check(read, found);
        if (season != null) {
            sameYear(season, read, found);
        }
        List<Fault> faults = season == null ? found.all : found.added(season);
        if (!faults.isEmpty()) {
            throw new EditFaults(faults.stream()
                    .map(fault -> new EditFaults.Place(fault, change(fault, tables, made)))
                    .toList());
        }
        try {
            return Sheets.season(read);
        } catch (IllegalStateException unreadable) {
            throw new EditFaults(found.all.stream()
                    .map(fault -> new EditFaults.Place(fault, -1))
                    .toList());
        }
    }

    private static Sheet<?> sheet(String table) {
        return Sheets.named(table).orElseThrow(() -> new IllegalArgumentException("no table " + table));
    }

    private static Fault stays(RowChange change) {
        return new Fault(
                change.table(),
                change.at() + 2,
                "",
                change.before() == null ? "" : String.join(", ", change.before().values()),
                "to stay as it is: the log is only added to; a wrong line is voided on the page of the log");
    }

    private static @Nullable Line apply(SeasonTables tables, Sheet<?> sheet, RowChange change) {
        List<Line> lines = tables.lines(sheet);
        Map<String, String> before = change.before();
        Map<String, String> after = change.after();
        if (before == null) {
            Line line = SeasonTables.line(sheet, after == null ? Map.of() : after);
            lines.add(change.at() < 0 ? lines.size() : Math.min(change.at(), lines.size()), line);
            return line;
        }
        int at = find(lines, change.at(), before)
                .orElseThrow(() -> new RowGoneException(gone(sheet, lines, change.at(), before)));
        if (after == null) {
            lines.remove(at);
            return null;
        }
        Line line = lines.get(at).with(after);
        lines.set(at, line);
        return line;
    }

    /** The row that reads so: where it is said to stand, else the first one. */
    private static Optional<Integer> find(List<Line> lines, int at, Map<String, String> texts) {
        if (at >= 0 && at < lines.size() && lines.get(at).texts().equals(texts)) {
            return Optional.of(at);
        }
        return IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).texts().equals(texts))
                .boxed()
                .findFirst();
    }

    private static String gone(Sheet<?> sheet, List<Line> lines, int at, Map<String, String> before) {
        String name = RowName.of(sheet, before);
        List<Column<?>> key =
                sheet.unique().isEmpty() ? List.of() : sheet.unique().get(0);
        Optional<Map<String, String>> now = key.isEmpty()
                ? Optional.empty()
                : lines.stream()
                        .map(Line::texts)
                        .filter(row -> key.stream()
                                .allMatch(column -> row.getOrDefault(column.key(), "")
                                        .equals(before.getOrDefault(column.key(), ""))))
                        .findFirst();
        if (now.isEmpty() && key.isEmpty() && at >= 0 && at < lines.size()) {
            now = Optional.of(lines.get(at).texts());
        }
        if (now.isEmpty()) {
            return name + " is no longer there: somebody else removed or renamed it since this was looked at.";
        }
        RowChange differs = RowChange.change(sheet.name(), at, before, now.get());
        List<String> words = new ArrayList<>();
        for (String column : differs.columns()) {
            words.add(column + " was " + shown(before.get(column)) + " and is "
                    + shown(now.get().get(column)));
        }
        return name + " was changed by somebody else since this was looked at: " + String.join("; ", words) + ".";
    }

    private static String shown(@Nullable String text) {
        return text == null ? "blank" : text.length() > 60 ? text.substring(0, 57) + "…" : text;
    }

    /** A season stays that of its year: another year is another season. */
    private static void sameYear(Season season, Tables read, Found found) {
        read.rows(SeasonSheet.SHEET).forEach(row -> {
            Integer year = row.find(SeasonSheet.YEAR);
            if (year != null && year != season.year()) {
                found.at(
                        row,
                        SeasonSheet.YEAR,
                        season.year() + ", the year of this season; another year is a season of its own");
            }
        });
    }

    private static int change(Fault fault, SeasonTables tables, List<@Nullable Line> made) {
        List<Line> lines = Sheets.named(fault.sheet()).map(tables::lines).orElse(List.of());
        int at = fault.row() - 2;
        return at < 0 || at >= lines.size() ? -1 : made.indexOf(lines.get(at));
    }

    /** Takes down what is wrong. */
    private static final class Found implements Objections {
        private final List<Fault> all = new ArrayList<>();

        @Override
        public void at(String place, int row, String column, String found, String expected) {
            Fault fault = new Fault(place, row, column, found, expected);
            if (!all.contains(fault)) {
                all.add(fault);
            }
        }

        /** Those that the season did not have before: rows may have moved, so their numbers do not count. */
        List<Fault> added(Season before) {
            if (all.isEmpty()) {
                return List.of();
            }
            Found old = new Found();
            SeasonTables tables = SeasonTables.of(before);
            Rules.check(tables.read(old), old);
            Map<List<String>, Integer> known = new HashMap<>();
            old.all.forEach(fault -> known.merge(key(fault), 1, Integer::sum));
            List<Fault> added = new ArrayList<>();
            for (Fault fault : all) {
                int left = known.getOrDefault(key(fault), 0);
                if (left > 0) {
                    known.put(key(fault), left - 1);
                } else {
                    added.add(fault);
                }
            }
            return added;
        }

        private static List<String> key(Fault fault) {
            return List.of(
                    fault.sheet(),
                    fault.column(),
                    fault.found(),
                    fault.expected().replaceAll("row \\d+", "row"));
        }
    }
}
