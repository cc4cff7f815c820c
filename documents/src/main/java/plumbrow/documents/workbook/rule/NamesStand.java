package plumbrow.documents.workbook.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Near;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.Sheets;

/** A name that refers to another sheet stands there. */
final class NamesStand implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        for (Sheet<?> sheet : Sheets.ALL) {
            for (Column<?> column : sheet.columns()) {
                Column.Reference reference = column.reference();
                if (reference != null
                        && tables.rows().containsKey(reference.sheet().name())) {
                    check(tables, sheet, column, reference, objections);
                }
            }
        }
    }

    private static void check(
            Tables tables, Sheet<?> sheet, Column<?> column, Column.Reference reference, Objections objections) {
        Set<String> names = new HashSet<>();
        tables.rows(reference.sheet()).forEach(row -> names.addAll(names(row, reference.column())));
        for (Row row : tables.rows(sheet)) {
            for (String name : names(row, column)) {
                if (!names.contains(name)) {
                    objections.at(row.place(), row.number(), column.key(), name, expected(reference, name, names));
                }
            }
        }
    }

    private static List<String> names(Row row, Column<?> column) {
        Object value = row.find(column);
        return value == null
                ? List.of()
                : value instanceof List<?> list
                        ? list.stream().map(String::valueOf).toList()
                        : List.of(String.valueOf(value));
    }

    private static String expected(Column.Reference reference, String name, Set<String> names) {
        return "a " + reference.column().key() + " of the sheet "
                + reference.sheet().name()
                + Near.to(name, names)
                        .map(near -> "; did you mean " + near + "?")
                        .orElse("");
    }
}
