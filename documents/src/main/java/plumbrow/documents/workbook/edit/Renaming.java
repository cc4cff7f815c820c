package plumbrow.documents.workbook.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.names.NameColumn;
import plumbrow.advice.names.Refers;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/**
 * A row under another name takes those along that refer to it: the fields of a farm, all that is said of a field, the passes of a
 * product. Lines of the log and choices stay as they were written, so that what they speak of can't be renamed.
 */
public final class Renaming {
    private static final String FIELD = "field";

    /** The column that gives a row of a table its name, and what refers to it. */
    private record Name(String table, String key, Set<Refers> by) {}

    private static final List<Name> NAMES = List.of(
            new Name("farms", "farm", Set.of(Refers.FARM)),
            new Name("fields", FIELD, Set.of(Refers.FIELD, Refers.PLACE)),
            new Name("shelf", "product", Set.of(Refers.PRODUCT, Refers.PARTNER)),
            new Name("programs", "program", Set.of(Refers.PROGRAM)),
            new Name("people", "person", Set.of(Refers.PERSON, Refers.FORMER_PERSON)));

    private Renaming() {}

    /** The change of a row, and where it takes another name, the changes of the rows that refer to it. */
    public static List<RowChange> along(Season season, RowChange change) {
        Map<String, String> before = change.before();
        Map<String, String> after = change.after();
        List<RowChange> changes = new ArrayList<>(List.of(change));
        if (before != null && after != null) {
            for (Name name : NAMES) {
                String old = before.getOrDefault(name.key(), "");
                String fresh = after.getOrDefault(name.key(), "");
                if (name.table().equals(change.table()) && !old.isEmpty() && !fresh.isEmpty() && !old.equals(fresh)) {
                    changes.addAll(referring(season, name, old, fresh, before.getOrDefault(FIELD, "")));
                }
            }
        }
        return changes;
    }

    private static List<RowChange> referring(Season season, Name name, String old, String fresh, String field) {
        List<RowChange> changes = new ArrayList<>();
        SeasonTables tables = SeasonTables.of(season);
        for (Sheet<?> sheet : Sheets.ALL) {
            List<String> keys = sheet.columns().stream()
                    .map(column -> column.key())
                    .filter(key -> {
                        NameColumn column = NameColumn.find(sheet.name(), key);
                        boolean logged = sheet.name().equals("log") && key.equals(name.key());
                        return logged || (column != null && name.by().contains(column.refers()));
                    })
                    .toList();
            List<Map<String, String>> rows = keys.isEmpty() ? List.of() : tables.rows(sheet);
            for (int i = 0; i < rows.size(); i++) {
                Map<String, String> row = rows.get(i);
                boolean within = !name.by().contains(Refers.PROGRAM) || field.equals(row.get(FIELD));
                Map<String, String> renamed = new LinkedHashMap<>(row);
                keys.stream().filter(key -> old.equals(row.get(key))).forEach(key -> renamed.put(key, fresh));
                if (within && !renamed.equals(row)) {
                    changes.add(RowChange.change(sheet.name(), i, row, renamed));
                }
            }
        }
        return changes;
    }
}
