package plumbrow.app.rows;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plumbrow.advice.season.Season;
import plumbrow.app.book.BookException;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.book.RowJson;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.RowName;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.edit.TypedRow;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/**
 * A table of the season as commands and programs see it.
 *
 * @param table its name in the workbook
 * @param purpose what it holds
 * @param columns its columns
 * @param rows its rows
 */
public record TableRows(String table, String purpose, List<ColumnSummary> columns, List<RowSummary> rows) {
    private static final int MARK = 16;

    public TableRows {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A column in words.
     *
     * @param key its name
     * @param expected what belongs there
     * @param choices the words that may stand there; empty where it is open
     */
    public record ColumnSummary(
            String key,
            String meaning,
            String expected,
            List<String> choices,
            String unit,
            boolean required,
            String blank,
            String example) {
        static ColumnSummary of(Column<?> column) {
            return new ColumnSummary(
                    column.key(),
                    column.meaning(),
                    column.kind().words(),
                    column.kind().choices(),
                    column.unit(),
                    column.required(),
                    column.blank(),
                    column.example());
        }
    }

    /**
     * A row.
     *
     * @param row its number as a spreadsheet counts, the header being row 1
     * @param seen a mark that changes with any of its cells; sent back with a change, it is refused where somebody else was
     *     quicker
     * @param cells the texts of its cells that are not blank
     */
    public record RowSummary(int row, String name, String seen, Map<String, String> cells) {
        static RowSummary of(Sheet<?> sheet, int number, Map<String, String> cells) {
            return new RowSummary(number, RowName.known(sheet, cells), mark(cells), cells);
        }
    }

    /** Name, purpose and number of rows of a table. */
    public record TableSummary(String table, String group, String purpose, int rows) {}

    /** Every table of the season. */
    public static List<TableSummary> tables(Season season) {
        SeasonTables tables = SeasonTables.of(season);
        List<TableSummary> all = new ArrayList<>();
        for (Sheet<?> sheet : Sheets.ALL) {
            all.add(new TableSummary(sheet.name(), TableGroup.of(sheet).title(), sheet.purpose(), tables.size(sheet)));
        }
        return all;
    }

    /** The table of a name, or a sentence that suggests the nearest. */
    public static Sheet<?> sheet(String name) {
        return TypedRow.table(name).orElseThrow(() -> new BookException(TypedRow.unknownTable(name)));
    }

    /**
     * A table of the season.
     *
     * @param find text that a row must hold in some cell; empty for all rows
     */
    public static TableRows of(Season season, Sheet<?> sheet, String find) {
        String looked = find.strip().toLowerCase(Locale.ROOT);
        List<RowSummary> rows = new ArrayList<>();
        List<Map<String, String>> all = SeasonTables.of(season).rows(sheet);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).values().stream()
                    .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(looked))) {
                rows.add(RowSummary.of(sheet, i + 2, all.get(i)));
            }
        }
        return new TableRows(
                sheet.name(),
                sheet.purpose(),
                sheet.columns().stream().map(ColumnSummary::of).toList(),
                rows);
    }

    /** One row by its number as a spreadsheet counts. */
    public static RowSummary row(Season season, Sheet<?> sheet, int number) {
        return SeasonTables.of(season)
                .row(sheet, number - 2)
                .map(cells -> RowSummary.of(sheet, number, cells))
                .orElseThrow(() -> new BookException("The table " + sheet.name() + " has no row " + number
                        + "; its rows are numbered from 2 to "
                        + (SeasonTables.of(season).size(sheet) + 1) + "."));
    }

    /** The change that adds a row. */
    public static RowChange add(Sheet<?> sheet, Map<String, String> typed) {
        return RowChange.add(sheet.name(), TypedRow.over(sheet, 0, Map.of(), typed));
    }

    /** The changes that add a row to each of several tables. */
    public static List<RowChange> addAll(Map<String, Map<String, String>> rows) {
        List<RowChange> changes = new ArrayList<>();
        rows.forEach((table, typed) -> changes.add(add(sheet(table), typed)));
        return changes;
    }

    /**
     * The change of some cells of a row; those that are not named stay.
     *
     * @param seen the mark of the row as it was looked at; empty where nobody says
     */
    public static RowChange change(Season season, Sheet<?> sheet, int number, Map<String, String> typed, String seen) {
        Map<String, String> before = seen(season, sheet, number, seen);
        return RowChange.change(sheet.name(), number - 2, before, TypedRow.over(sheet, number, before, typed));
    }

    /** The change that removes a row. */
    public static RowChange remove(Season season, Sheet<?> sheet, int number, String seen) {
        return RowChange.remove(sheet.name(), number - 2, seen(season, sheet, number, seen));
    }

    private static Map<String, String> seen(Season season, Sheet<?> sheet, int number, String seen) {
        RowSummary row = row(season, sheet, number);
        if (!seen.isEmpty() && !row.seen().equals(seen)) {
            throw new MeanwhileException("Row " + number + " of " + sheet.name()
                    + " is no longer the one that was looked at: it is now " + row.name() + ", " + row.cells()
                    + ". Nothing was changed.");
        }
        return row.cells();
    }

    private static String mark(Map<String, String> cells) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(RowJson.of(cells).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, MARK);
        } catch (NoSuchAlgorithmException none) {
            throw new IllegalStateException("every Java has SHA-256", none);
        }
    }
}
