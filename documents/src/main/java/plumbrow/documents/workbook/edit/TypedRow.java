package plumbrow.documents.workbook.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.names.Near;
import plumbrow.documents.workbook.Fault;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** What somebody types for a row: texts by column key, of which blank ones mean a blank cell. */
public final class TypedRow {
    private TypedRow() {}

    /** The table of a name, today's or a former one; empty where there is none. */
    public static Optional<Sheet<?>> table(String name) {
        return Sheets.named(name);
    }

    /** "There is no table 'feilds'; did you mean fields?". */
    public static String unknownTable(String name) {
        return "There is no table '" + name + "'"
                + Near.best(name, Sheets.ALL.stream().map(Sheet::name).toList())
                        .map(near -> "; did you mean " + near + "?")
                        .orElse(".");
    }

    /**
     * The row that a person means who types these cells over a row as it was.
     *
     * @param number of the row as a spreadsheet counts, for the faults
     * @param before the row as it was; empty for one that comes new
     * @param typed texts by column; a column that is not named stays as it was
     * @throws EditFaults where a column is none of the table
     */
    public static Map<String, String> over(
            Sheet<?> sheet, int number, Map<String, String> before, Map<String, String> typed) {
        Map<String, String> named = new LinkedHashMap<>();
        List<EditFaults.Place> faults = new ArrayList<>();
        typed.forEach((key, text) -> {
            String tidy = key.strip().toLowerCase(Locale.ROOT);
            Optional<Column<?>> column = sheet.columns().stream()
                    .filter(one -> one.key().equals(tidy) || one.former().equals(tidy))
                    .findFirst();
            column.ifPresentOrElse(
                    one -> named.put(one.key(), text),
                    () -> faults.add(new EditFaults.Place(
                            new Fault(
                                    sheet.name(),
                                    number,
                                    key,
                                    key,
                                    "a column name of this sheet"
                                            + Near.suggested(
                                                    key,
                                                    sheet.columns().stream()
                                                            .map(Column::key)
                                                            .toList())),
                            0)));
        });
        if (!faults.isEmpty()) {
            throw new EditFaults(faults);
        }
        Map<String, String> row = new LinkedHashMap<>();
        for (Column<?> column : sheet.columns()) {
            String text = named.getOrDefault(column.key(), before.getOrDefault(column.key(), ""))
                    .replace("\r\n", "\n")
                    .strip();
            if (!text.isEmpty()) {
                row.put(column.key(), text);
            }
        }
        return row;
    }
}
