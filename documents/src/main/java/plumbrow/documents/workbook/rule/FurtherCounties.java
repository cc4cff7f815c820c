package plumbrow.documents.workbook.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.AlsoInSheet;
import plumbrow.documents.workbook.sheet.FieldSheet;

/** A further county that a field lies in is not the field's own. */
final class FurtherCounties implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
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
