package plumbrow.documents.workbook.rule;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.ProgramSheet;

/** A field with programs has exactly one baseline, and no second one. */
final class ProgramsOfFields implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        baselines(tables, objections);
    }

    private static void baselines(Tables tables, Objections objections) {
        Map<String, Row> baselines = new HashMap<>();
        Set<String> unreadable = new HashSet<>();
        for (Row row : tables.rows(ProgramSheet.SHEET)) {
            String field = row.find(ProgramSheet.FIELD);
            if (field == null) {
                continue;
            }
            Boolean baseline = row.find(ProgramSheet.BASELINE);
            if (baseline == null) {
                unreadable.add(field);
            } else if (baseline) {
                Row other = baselines.putIfAbsent(field, row);
                if (other != null) {
                    objections.at(
                            row,
                            ProgramSheet.BASELINE,
                            "one baseline for " + field + "; row " + other.number() + " is one already");
                }
            }
        }
        tables.index(ProgramSheet.SHEET, ProgramSheet.FIELD).forEach((field, row) -> {
            if (!baselines.containsKey(field) && !unreadable.contains(field)) {
                objections.at(row, ProgramSheet.BASELINE, "yes for one program of " + field + ", the baseline");
            }
        });
    }

    /** Field and name of every program; what names another one is told of it already. */
    static Set<List<Object>> all(Tables tables) {
        Set<List<Object>> all = new HashSet<>();
        for (Row row : tables.rows(ProgramSheet.SHEET)) {
            String field = row.find(ProgramSheet.FIELD);
            String program = row.find(ProgramSheet.PROGRAM);
            if (field != null && program != null) {
                all.add(List.of(field, program));
            }
        }
        return all;
    }
}
