package plumbrow.documents.workbook.edit;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;

/** What a row is called in a sentence: by the columns of which no two rows are the same. */
public final class RowName {
    private static final int MOST_COLUMNS = 4;

    private RowName() {}

    /** "passes: East 80, Half rate, 2". */
    public static String of(Sheet<?> sheet, Map<String, String> row) {
        return sheet.name() + ": " + known(sheet, row);
    }

    /** "East 80, Half rate, 2". */
    public static String known(Sheet<?> sheet, Map<String, String> row) {
        String name = columns(sheet).stream()
                .map(column -> row.get(column.key()))
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
        return name.isEmpty() ? row.values().stream().limit(3).collect(Collectors.joining(", ")) : name;
    }

    /** The columns by which a person knows a row of the table. */
    public static List<Column<?>> columns(Sheet<?> sheet) {
        return sheet.unique().isEmpty()
                ? sheet.columns().stream()
                        .filter(Column::required)
                        .limit(MOST_COLUMNS)
                        .collect(Collectors.toList())
                : sheet.unique().get(0);
    }
}
