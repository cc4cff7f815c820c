package plumbrow.documents.workbook.rule;

import java.util.Map;
import plumbrow.advice.field.Crop;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.FieldSheet;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.SeedSheet;
import plumbrow.documents.workbook.sheet.ShelfSheet;

/** A pass puts out what it can put out: seed is planted and of the field's crop, the rest is sprayed or spread. */
final class PassesFit implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<String, Row> shelf = tables.index(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
        Map<String, Row> seeds = tables.index(SeedSheet.SHEET, SeedSheet.PRODUCT);
        Map<String, Row> fields = tables.index(FieldSheet.SHEET, FieldSheet.FIELD);
        for (Row pass : tables.rows(PassSheet.SHEET)) {
            String name = String.valueOf(pass.find(PassSheet.PRODUCT));
            Row product = shelf.get(name);
            Row seed = seeds.get(name);
            Row field = fields.get(String.valueOf(pass.find(PassSheet.FIELD)));
            if (product != null) {
                kind(pass, product, objections);
            }
            if (seed != null && field != null) {
                crop(pass, seed, field, objections);
            }
        }
    }

    private static void kind(Row pass, Row product, Objections objections) {
        PassKind kind = pass.find(PassSheet.KIND);
        ProductKind what = product.find(ShelfSheet.KIND);
        if (kind == null || what == null) {
            return;
        }
        boolean spread = kind == PassKind.SPRAY || kind == PassKind.GRANULE;
        if (kind == PassKind.SEED && what != ProductKind.SEED && what != ProductKind.SEED_TREATMENT) {
            objections.at(pass, PassSheet.PRODUCT, "a seed or seed treatment for a seed pass; this is " + what.word());
        } else if (spread && what == ProductKind.SEED) {
            objections.at(pass, PassSheet.PRODUCT, "another product for a " + kind.word() + " pass; this is seed");
        }
    }

    private static void crop(Row pass, Row seed, Row field, Objections objections) {
        Crop planted = seed.find(SeedSheet.CROP);
        Crop wanted = field.find(FieldSheet.CROP);
        if (planted != null && wanted != null && planted != wanted) {
            objections.at(
                    pass, PassSheet.PRODUCT, "a " + wanted.word() + " seed on this field; this is " + planted.word());
        }
    }
}
