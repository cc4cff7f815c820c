package plumbrow.documents.workbook.form;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rows of all sheets of one workbook. */
public record Tables(Map<String, List<Row>> rows) implements SheetValues {
    public Tables {
        rows = Map.copyOf(rows);
    }

    /** The rows of a sheet; none where the sheet is missing. */
    public List<Row> rows(Sheet<?> sheet) {
        return rows.getOrDefault(sheet.name(), List.of());
    }

    /** The rows of a sheet by what stands in a column; of two that say the same, the first. */
    public <T> Map<T, Row> index(Sheet<?> sheet, Column<T> column) {
        Map<T, Row> index = new HashMap<>();
        for (Row row : rows(sheet)) {
            T value = row.find(column);
            if (value != null) {
                index.putIfAbsent(value, row);
            }
        }
        return index;
    }

    /** The values of a sheet in whose rows nothing is wrong. */
    @Override
    public <R> List<R> values(Sheet<R> sheet) {
        return rows(sheet).stream().map(sheet.build()).toList();
    }
}
