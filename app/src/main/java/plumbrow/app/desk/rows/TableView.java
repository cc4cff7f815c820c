package plumbrow.app.desk.rows;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.rows.TableGroup;
import plumbrow.app.rows.TableNames;
import plumbrow.documents.workbook.edit.RowName;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.form.BoundaryKind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.ShapeKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.WholeKind;

/**
 * A table of the season, a page of it.
 *
 * @param columns the columns that are shown, those by which a row is known first
 * @param part the rows on this page
 * @param find what is looked for in any cell; empty for all rows
 * @param all how many rows the table has
 * @param told what was just done; empty for nothing
 * @param change number of the change that was just made, to be taken back; 0 for none
 */
public record TableView(
        Season season,
        Sheet<?> sheet,
        List<Column<?>> columns,
        Part<Line> part,
        String find,
        int all,
        String told,
        int change) {
    private static final int MOST_COLUMNS = 7;

    /** A row and its number as a spreadsheet counts. */
    public record Line(int number, Map<String, String> row, String name) {}

    static TableView of(Season season, Sheet<?> sheet, String find, int page, String told, int change) {
        List<Line> lines = new ArrayList<>();
        List<Map<String, String>> rows = SeasonTables.of(season).rows(sheet);
        String looked = find.strip().toLowerCase(Locale.ROOT);
        for (int i = 0; i < rows.size(); i++) {
            Map<String, String> row = rows.get(i);
            if (looked.isEmpty()
                    || row.values().stream()
                            .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(looked))) {
                lines.add(new Line(i + 2, row, RowName.known(sheet, row)));
            }
        }
        return new TableView(
                season, sheet, columns(sheet, rows), Part.of(lines, page), find, rows.size(), told, change);
    }

    /** The columns of the rows' names, then those that most rows have filled in. */
    private static List<Column<?>> columns(Sheet<?> sheet, List<Map<String, String>> rows) {
        List<Column<?>> columns = new ArrayList<>(RowName.columns(sheet));
        for (Column<?> column : sheet.columns()) {
            long filled =
                    rows.stream().filter(row -> row.containsKey(column.key())).count();
            boolean shape = column.kind() instanceof BoundaryKind || column.kind() instanceof ShapeKind;
            if (columns.size() < MOST_COLUMNS && !columns.contains(column) && !shape && 2 * filled > rows.size()) {
                columns.add(column);
            }
        }
        return columns;
    }

    public String title() {
        return TableNames.of(sheet);
    }

    /** What the table holds. */
    public String purpose() {
        return TableNames.words(sheet.purpose());
    }

    public TableGroup group() {
        return TableGroup.of(sheet);
    }

    /** Whether its only row is changed and none added. */
    public boolean single() {
        return sheet.most() == 1 && all == 1;
    }

    /** A field of each crop, from whose page a seed is entered; none for other tables. */
    public List<Field> seedsFrom() {
        Set<Crop> crops = EnumSet.noneOf(Crop.class);
        return Set.of("shelf", "seeds").contains(sheet.name())
                ? season.fields().stream()
                        .filter(field -> crops.add(field.crop()))
                        .toList()
                : List.of();
    }

    public boolean log() {
        return sheet.name().equals("log");
    }

    public static boolean number(Column<?> column) {
        return column.kind() instanceof NumberKind || column.kind() instanceof WholeKind;
    }

    public static String head(Column<?> column) {
        return TableNames.of(column)
                + (column.unit().isEmpty() || column.unit().contains("_") ? "" : ", " + column.unit());
    }

    /** A cell short enough for a table. */
    public static String cell(Line line, Column<?> column) {
        String text = line.row().getOrDefault(column.key(), "");
        return text.length() > 60 ? text.substring(0, 57) + "…" : text;
    }
}
