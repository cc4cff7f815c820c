package plumbrow.documents.workbook.rule;

import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.program.PassKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.TillageSheet;

/** How a tillage pass is run is said of a tillage pass that is planned. */
final class TillageFits implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<List<Object>, Row> passes = SpraysFit.passes(tables);
        Set<List<Object>> programs = ProgramsOfFields.all(tables);
        for (Row row : tables.rows(TillageSheet.SHEET)) {
            String field = row.find(TillageSheet.FIELD);
            String program = row.find(TillageSheet.PROGRAM);
            Integer number = row.find(TillageSheet.PASS);
            if (field == null || program == null || number == null || !programs.contains(List.of(field, program))) {
                continue;
            }
            Row pass = passes.get(List.of(field, program, number));
            PassKind kind = pass == null ? null : pass.find(PassSheet.KIND);
            if (pass == null || (kind != null && kind != PassKind.TILLAGE)) {
                objections.at(
                        row,
                        TillageSheet.PASS,
                        "a tillage pass of the program " + program + " of " + field + " on the sheet passes");
            }
        }
    }
}
