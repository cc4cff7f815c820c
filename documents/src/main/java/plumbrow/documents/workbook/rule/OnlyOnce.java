package plumbrow.documents.workbook.rule;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.Sheets;

/** No two rows of a sheet are for the same thing. Names that differ only in case are the same. */
final class OnlyOnce implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        for (Sheet<?> sheet : Sheets.ALL) {
            sheet.unique().forEach(columns -> check(tables.rows(sheet), columns, objections));
        }
    }

    private static void check(List<Row> rows, List<Column<?>> columns, Objections objections) {
        Map<List<Object>, Integer> first = new HashMap<>();
        for (Row row : rows) {
            if (columns.stream().allMatch(row::sound)) {
                List<Object> key =
                        columns.stream().map(column -> tidy(row.find(column))).toList();
                Integer before = first.putIfAbsent(key, row.number());
                if (before != null) {
                    objections.at(row, columns.get(columns.size() - 1), expected(columns, before));
                }
            }
        }
    }

    private static Object tidy(@Nullable Object value) {
        return value instanceof String text
                ? text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ")
                : Objects.requireNonNullElse(value, "");
    }

    private static String expected(List<Column<?>> columns, int before) {
        String names = columns.stream().map(Column::key).collect(Collectors.joining(", "));
        return "each " + names + " once; row " + before + " has the same";
    }
}
