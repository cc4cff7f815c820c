package plumbrow.documents.workbook.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.PassSheet;

/** The passes of a program are made in the order of their numbers. */
final class PassOrder implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<List<String>, List<Row>> programs = new HashMap<>();
        for (Row row : tables.rows(PassSheet.SHEET)) {
            String field = row.find(PassSheet.FIELD);
            String program = row.find(PassSheet.PROGRAM);
            if (field != null && program != null && row.find(PassSheet.PASS) != null) {
                programs.computeIfAbsent(List.of(field, program), key -> new ArrayList<>())
                        .add(row);
            }
        }
        programs.values().forEach(passes -> check(passes, objections));
    }

    private static void check(List<Row> passes, Objections objections) {
        passes.sort(Comparator.comparing(row -> row.get(PassSheet.PASS)));
        @Nullable Row before = null;
        for (Row row : passes) {
            LocalDate date = row.find(PassSheet.DATE);
            if (date == null) {
                continue;
            }
            if (before != null && date.isBefore(before.get(PassSheet.DATE))) {
                objections.at(
                        row,
                        PassSheet.DATE,
                        "a day not before " + before.found(PassSheet.DATE) + ", the day of pass "
                                + before.found(PassSheet.PASS));
            } else {
                before = row;
            }
        }
    }
}
