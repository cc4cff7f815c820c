package plumbrow.app.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.app.book.SeasonChange;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.RowName;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/**
 * A change of the season in words.
 *
 * @param change the change
 * @param title what it did, in short
 * @param rows a line for each row, with what its cells were and are
 */
public record ChangeWords(SeasonChange change, String title, List<Line> rows) {
    private static final int LONGEST = 60;

    /**
     * A row that came, went or became another.
     *
     * @param table the table's name in the workbook
     * @param verb added, changed or removed
     * @param name what the row is called
     * @param cells what each cell was and is
     */
    public record Line(String table, String verb, String name, List<Cell> cells) {
        /** "fields: changed East 80: acres 78.4 → 80". */
        public String text() {
            List<String> words = new ArrayList<>();
            for (Cell cell : cells) {
                words.add(cell.column() + " " + cell.text());
            }
            return table + ": " + verb + " " + name + (words.isEmpty() ? "" : ": " + String.join("; ", words));
        }
    }

    /** A cell that differs; blank before or after where it was or is blank. */
    public record Cell(String column, String before, String after) {
        /** "78.4 → 80". */
        public String text() {
            return shown(before) + " → " + shown(after);
        }

        private static String shown(String text) {
            return text.isEmpty() ? "blank" : text.length() > LONGEST ? text.substring(0, LONGEST - 3) + "…" : text;
        }
    }

    public static ChangeWords of(SeasonChange change) {
        List<Line> lines = lines(change.rows());
        return new ChangeWords(change, title(change, lines), lines);
    }

    /** The rows of a change, a line each. */
    public static List<Line> lines(List<RowChange> rows) {
        return rows.stream().map(ChangeWords::line).toList();
    }

    private static Line line(RowChange row) {
        Map<String, String> before = row.before();
        Map<String, String> after = row.after();
        Map<String, String> named = after == null ? before : before == null ? after : before;
        String verb = before == null ? "added" : after == null ? "removed" : "changed";
        List<Cell> cells = new ArrayList<>();
        if (before != null && after != null) {
            row.columns()
                    .forEach(
                            key -> cells.add(new Cell(key, before.getOrDefault(key, ""), after.getOrDefault(key, ""))));
        }
        return new Line(row.table(), verb, name(row.table(), named), cells);
    }

    private static String name(String table, @Nullable Map<String, String> row) {
        Map<String, String> named = row == null ? Map.of() : row;
        return Sheets.named(table)
                .map((Sheet<?> sheet) -> RowName.known(sheet, named))
                .orElseGet(() -> String.join(", ", named.values()));
    }

    private static String title(SeasonChange change, List<Line> lines) {
        Integer target = change.takesBack();
        String what = lines.isEmpty()
                ? (change.began() || change.takesBack() != null
                        ? "Season " + change.season() + " began"
                        : "The season came in")
                : lines.size() == 1
                        ? lines.get(0).text()
                        : lines.size() + " rows: " + lines.get(0).text() + "; …";
        return switch (change.way()) {
            case UNDO -> "Took back change " + target + ". " + what;
            case REDO -> "Took back undo " + target + ". " + what;
            case WORKBOOK -> lines.isEmpty() ? "A workbook came in where there was no season" : "Workbook: " + what;
            default -> what;
        };
    }
}
