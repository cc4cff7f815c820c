package plumbrow.app.command.said;

import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.rows.ChangeSummary;
import plumbrow.app.rows.ChangeWords;
import plumbrow.app.rows.TableRows;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;

/** Tables, rows and changes of the season in words. */
public final class RowWords {
    private RowWords() {}

    /** Every table with the number of its rows, group by group. */
    public static String tables(List<TableRows.TableSummary> tables) {
        Paper paper = new Paper();
        String group = "";
        for (TableRows.TableSummary table : tables.stream()
                .sorted(Comparator.comparing(TableRows.TableSummary::group))
                .toList()) {
            if (!table.group().equals(group)) {
                group = table.group();
                paper.prose("", group);
            }
            paper.prose("  " + table.table() + "  ", table.rows() + (table.rows() == 1 ? " row" : " rows"));
        }
        return paper.text();
    }

    /** The rows of a table, each with its number and its cells. */
    public static String rows(TableRows table) {
        if (table.rows().isEmpty()) {
            return "No such row in " + table.table() + ". " + table.purpose();
        }
        Paper paper = new Paper();
        table.rows().forEach(row -> paper.prose("  " + row.row() + "  ", cells(row.cells())));
        return paper.text();
    }

    private static String cells(Map<String, String> cells) {
        return cells.entrySet().stream()
                .map(cell -> cell.getKey() + "=" + cell.getValue())
                .collect(Collectors.joining("; "));
    }

    /** A row with every column. */
    public static String row(Sheet<?> sheet, TableRows.RowSummary row) {
        Paper paper = new Paper();
        paper.prose("", sheet.name() + ", row " + row.row() + ": " + row.name() + " (mark " + row.seen() + ")");
        for (Column<?> column : sheet.columns()) {
            String unit = column.unit().isEmpty() ? "" : " " + column.unit();
            paper.prose(
                    "  " + column.key() + "  ",
                    row.cells().containsKey(column.key())
                            ? row.cells().get(column.key()) + unit
                            : "blank: " + column.meaning() + "; "
                                    + column.kind().words() + (column.blank().isEmpty() ? "" : "; " + column.blank()));
        }
        return paper.text();
    }

    /** Changes, latest last, each with what its cells were and are. */
    public static String changes(List<SeasonChange> changes) {
        if (changes.isEmpty()) {
            return "Nothing was changed.";
        }
        Paper paper = new Paper();
        for (SeasonChange change : changes) {
            ChangeWords words = ChangeWords.of(change);
            paper.prose(
                    "  " + change.number() + "  ",
                    (change.at() == null ? "" : change.at().truncatedTo(ChronoUnit.SECONDS) + ", ") + change.who()
                            + ", by "
                            + change.way().word() + (change.why().isEmpty() ? "" : ", " + change.why())
                            + (change.takenBack() ? " (taken back)" : "") + ": " + words.title());
            if (words.rows().size() > 1) {
                words.rows().forEach(line -> paper.prose("       ", line.text()));
            }
        }
        return paper.text();
    }

    /** What was taken back. */
    public static String takenBack(ChangeSummary change) {
        return "Change " + change.change() + ": " + change.says() + ".";
    }
}
