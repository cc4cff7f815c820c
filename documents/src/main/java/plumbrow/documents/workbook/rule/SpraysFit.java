package plumbrow.documents.workbook.rule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.GrowthStage;
import plumbrow.advice.program.PassKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.FieldSheet;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.SpraySheet;

/** How a pass is sprayed is said of a pass that is planned and puts out a product, at a stage that its crop has. */
final class SpraysFit implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<List<Object>, Row> passes = passes(tables);
        Set<List<Object>> programs = ProgramsOfFields.all(tables);
        Map<String, Row> fields = tables.index(FieldSheet.SHEET, FieldSheet.FIELD);
        for (Row spray : tables.rows(SpraySheet.SHEET)) {
            String field = spray.find(SpraySheet.FIELD);
            String program = spray.find(SpraySheet.PROGRAM);
            Integer number = spray.find(SpraySheet.PASS);
            if (field != null && program != null && number != null && programs.contains(List.of(field, program))) {
                pass(spray, passes.get(List.of(field, program, number)), objections);
            }
            Row land = fields.get(String.valueOf(field));
            Crop crop = land == null ? null : land.find(FieldSheet.CROP);
            String stage = spray.find(SpraySheet.STAGE);
            if (crop != null && stage != null && GrowthStage.place(crop, stage).isEmpty()) {
                objections.at(spray, SpraySheet.STAGE, "a stage of " + crop.word() + ": " + GrowthStage.words(crop));
            }
        }
    }

    /** The passes by field, program and number. */
    static Map<List<Object>, Row> passes(Tables tables) {
        Map<List<Object>, Row> passes = new HashMap<>();
        for (Row row : tables.rows(PassSheet.SHEET)) {
            String field = row.find(PassSheet.FIELD);
            String program = row.find(PassSheet.PROGRAM);
            Integer number = row.find(PassSheet.PASS);
            if (field != null && program != null && number != null) {
                passes.put(List.of(field, program, number), row);
            }
        }
        return passes;
    }

    private static void pass(Row spray, @Nullable Row pass, Objections objections) {
        if (pass == null) {
            objections.at(
                    spray,
                    SpraySheet.PASS,
                    "a pass of the program " + spray.found(SpraySheet.PROGRAM) + " of " + spray.found(SpraySheet.FIELD)
                            + " on the sheet passes");
            return;
        }
        PassKind kind = pass.find(PassSheet.KIND);
        if (kind != null && kind != PassKind.SEED && kind != PassKind.SPRAY && kind != PassKind.GRANULE) {
            objections.at(spray, SpraySheet.PASS, "a seed, spray or granule pass; this is a " + kind.word() + " pass");
        }
    }
}
