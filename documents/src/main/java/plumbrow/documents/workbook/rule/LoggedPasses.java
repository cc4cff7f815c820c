package plumbrow.documents.workbook.rule;

import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.LogSheet;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.ShelfSheet;

/** A line of the log that is said to be a planned pass is one of its product. */
final class LoggedPasses implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<List<Object>, Row> passes = SpraysFit.passes(tables);
        Set<List<Object>> programs = ProgramsOfFields.all(tables);
        Map<String, Row> shelf = tables.index(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
        for (Row row : tables.rows(LogSheet.SHEET)) {
            String field = row.find(LogSheet.FIELD);
            String program = row.find(LogSheet.PROGRAM);
            String number = row.find(LogSheet.PASS);
            String product = row.find(LogSheet.PRODUCT);
            if (field == null
                    || program == null
                    || number == null
                    || !number.matches("[1-9][0-9]?")
                    || !programs.contains(List.of(field, program))) {
                continue;
            }
            Row pass = passes.get(List.of(field, program, Integer.valueOf(number)));
            String planned = pass == null ? null : pass.find(PassSheet.PRODUCT);
            if (product != null && shelf.containsKey(product) && (pass == null || !product.equals(planned))) {
                objections.at(
                        row,
                        LogSheet.PASS,
                        "a pass of the program " + program + " of " + field + " that puts out " + product
                                + (planned == null ? "" : "; pass " + number + " puts out " + planned));
            }
        }
    }
}
