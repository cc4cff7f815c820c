package plumbrow.documents.workbook.rule;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumbrow.advice.field.FeatureKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.AlsoInSheet;
import plumbrow.documents.workbook.sheet.FieldSheet;
import plumbrow.documents.workbook.sheet.SurroundingsSheet;

/** Around a field there is something or nothing, not both; and a further county is not the field's own. */
final class LookedOver implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        nothingOrSomething(tables.rows(SurroundingsSheet.SHEET), objections);
        furtherCounties(tables, objections);
    }

    private static void nothingOrSomething(List<Row> rows, Objections objections) {
        Map<String, Row> something = new HashMap<>();
        for (Row row : rows) {
            String field = row.find(SurroundingsSheet.FIELD);
            Optional<FeatureKind> kind = row.find(SurroundingsSheet.KIND);
            if (field != null && kind != null && kind.isPresent()) {
                something.putIfAbsent(field, row);
            }
        }
        for (Row row : rows) {
            Optional<FeatureKind> kind = row.find(SurroundingsSheet.KIND);
            Row other = something.get(String.valueOf(row.find(SurroundingsSheet.FIELD)));
            if (kind != null && kind.isEmpty() && other != null) {
                objections.at(
                        row,
                        SurroundingsSheet.KIND,
                        "no such row, since something was found: a " + other.found(SurroundingsSheet.KIND) + " in "
                                + (other.place().equals(row.place()) ? "" : other.place() + ", ") + "row "
                                + other.number());
            }
        }
    }

    private static void furtherCounties(Tables tables, Objections objections) {
        Set<List<String>> own = new HashSet<>();
        for (Row row : tables.rows(FieldSheet.SHEET)) {
            String field = row.find(FieldSheet.FIELD);
            String state = row.find(FieldSheet.STATE);
            String county = row.find(FieldSheet.COUNTY);
            if (field != null && state != null && county != null) {
                own.add(List.of(field, state, county));
            }
        }
        for (Row row : tables.rows(AlsoInSheet.SHEET)) {
            String field = row.find(AlsoInSheet.FIELD);
            String state = row.find(AlsoInSheet.STATE);
            String county = row.find(AlsoInSheet.COUNTY);
            if (field != null && state != null && county != null && own.contains(List.of(field, state, county))) {
                objections.at(
                        row, AlsoInSheet.COUNTY, "another county than the one this field has on the sheet fields");
            }
        }
    }
}
