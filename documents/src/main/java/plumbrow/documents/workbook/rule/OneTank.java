package plumbrow.documents.workbook.rule;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.SpraySheet;

/** What goes out in one tank goes out on one day, from the same nozzles, by the same hand. */
final class OneTank implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<List<Object>, Row> passes = SpraysFit.passes(tables);
        Map<List<String>, Row> first = new HashMap<>();
        for (Row spray : tables.rows(SpraySheet.SHEET)) {
            String field = spray.find(SpraySheet.FIELD);
            String program = spray.find(SpraySheet.PROGRAM);
            String tank = spray.find(SpraySheet.TANK);
            if (field != null && program != null && tank != null) {
                Row before = first.putIfAbsent(List.of(field, program, tank), spray);
                if (before != null) {
                    sameDay(spray, before, passes, objections);
                    SpraySheet.OF_THE_TRIP.forEach(column -> same(spray, before, column, objections));
                }
            }
        }
    }

    private static void sameDay(Row spray, Row before, Map<List<Object>, Row> passes, Objections objections) {
        LocalDate day = day(spray, passes);
        LocalDate other = day(before, passes);
        if (day != null && other != null && !day.equals(other)) {
            objections.at(
                    spray,
                    SpraySheet.TANK,
                    "a tank of its own: this pass is planned for " + day + ", that of row " + before.number() + " for "
                            + other);
        }
    }

    private static @Nullable LocalDate day(Row spray, Map<List<Object>, Row> passes) {
        Integer number = spray.find(SpraySheet.PASS);
        Row pass = number == null
                ? null
                : passes.get(List.of(spray.get(SpraySheet.FIELD), spray.get(SpraySheet.PROGRAM), number));
        return pass == null ? null : pass.find(PassSheet.DATE);
    }

    private static void same(Row spray, Row before, Column<?> column, Objections objections) {
        Object value = spray.find(column);
        Object other = before.find(column);
        if (said(value, column) && said(other, column) && !Objects.equals(value, other)) {
            objections.at(
                    spray,
                    column,
                    before.found(column) + ", as in row " + before.number() + ", since both go out in one tank");
        }
    }

    /** Whether somebody said more than a blank cell says. */
    private static boolean said(@Nullable Object value, Column<?> column) {
        return value != null && !value.equals(column.fallback());
    }
}
