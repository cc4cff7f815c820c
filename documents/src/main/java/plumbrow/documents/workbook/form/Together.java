package plumbrow.documents.workbook.form;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Columns of which a row fills all or none. */
public record Together(List<Column<?>> columns) implements RowCheck {
    public static Together of(Column<?>... columns) {
        return new Together(Arrays.asList(columns));
    }

    @Override
    public void check(Row row, Objections objections) {
        if (columns.stream().allMatch(row::blank)) {
            return;
        }
        String names = columns.stream().map(Column::key).collect(Collectors.joining(", "));
        columns.stream()
                .filter(row::blank)
                .forEach(column ->
                        objections.at(row, column, column.kind().words() + ", since " + names + " go together"));
    }
}
