package plumbrow.documents.workbook.rule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.names.NameColumn;
import plumbrow.advice.names.NameColumn.Named;
import plumbrow.advice.names.UnknownName;
import plumbrow.advice.names.UnknownNames;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.Sheets;

/** A name that refers to something finds it. What refers to what stands in {@link NameColumn}. */
final class NamesKnown implements Rule {
    /** Words of a list that are no entry of it. */
    private static final Set<String> NO_ENTRY = Set.of("none", "all");

    @Override
    public void check(Tables tables, Objections objections) {
        Map<String, Sheet<?>> sheets = Sheets.ALL.stream().collect(Collectors.toMap(Sheet::name, Function.identity()));
        List<UnknownName> unknown = UnknownNames.among(
                column -> named(tables, sheets.get(column.sheet()), column), tables.rows()::containsKey);
        for (UnknownName name : unknown) {
            tables.rows(sheet(sheets, name)).stream()
                    .filter(row -> row.number() == name.row())
                    .findFirst()
                    .ifPresent(row ->
                            objections.at(row.place(), row.number(), name.column(), name.found(), name.expected()));
        }
    }

    private static Sheet<?> sheet(Map<String, Sheet<?>> sheets, UnknownName name) {
        Sheet<?> sheet = sheets.get(name.sheet());
        if (sheet == null) {
            throw new IllegalStateException("no sheet " + name.sheet());
        }
        return sheet;
    }

    private static List<Named> named(Tables tables, @Nullable Sheet<?> sheet, NameColumn column) {
        List<Named> found = new ArrayList<>();
        if (sheet != null) {
            for (Row row : tables.rows(sheet)) {
                String within = column.within().isEmpty() ? "" : text(row, sheet, column.within());
                String field = text(row, sheet, "field");
                String product = text(row, sheet, "product");
                for (String name : texts(row, sheet, column.key())) {
                    found.add(new Named(row.number(), name, within, field, product));
                }
            }
        }
        return found;
    }

    private static String text(Row row, Sheet<?> sheet, String key) {
        List<String> texts = texts(row, sheet, key);
        return texts.isEmpty() ? "" : texts.get(0);
    }

    /** The entries of a cell that could be read; one where the column holds no list. */
    private static List<String> texts(Row row, Sheet<?> sheet, String key) {
        return sheet.columns().stream()
                .filter(column -> column.key().equals(key))
                .flatMap(column -> texts(row, column).stream())
                .toList();
    }

    private static <T> List<String> texts(Row row, Column<T> column) {
        T value = row.find(column);
        if (value == null) {
            return List.of();
        }
        Kind<T> kind = column.kind();
        String shown = kind.show(value).found();
        return value instanceof String
                ? List.of(shown)
                : Arrays.stream(shown.split(";"))
                        .map(String::strip)
                        .filter(entry -> !entry.isEmpty() && !NO_ENTRY.contains(entry))
                        .toList();
    }
}
