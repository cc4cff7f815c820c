package plumbrow.documents.workbook.rule;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.SavedColumns;
import plumbrow.documents.workbook.sheet.SeedSheet;
import plumbrow.documents.workbook.sheet.ShelfSheet;

/** Of each seed is known what turns its price and its rate into dollars an acre. */
final class SeedsComplete implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<String, Row> shelf = tables.index(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
        Map<String, Row> seeds = tables.index(SeedSheet.SHEET, SeedSheet.PRODUCT);
        for (Row product : tables.rows(ShelfSheet.SHEET)) {
            String name = product.find(ShelfSheet.PRODUCT);
            if (name != null && product.find(ShelfSheet.KIND) == ProductKind.SEED && !seeds.containsKey(name)) {
                objections.at(product, ShelfSheet.PRODUCT, "a row for this seed on the sheet seeds");
            }
        }
        seeds.forEach((name, seed) -> {
            Row product = shelf.get(name);
            if (product != null) {
                check(seed, product, objections);
            }
        });
        planted(tables, seeds, objections);
    }

    private static void check(Row seed, Row product, Objections objections) {
        ProductKind kind = product.find(ShelfSheet.KIND);
        if (kind != null && kind != ProductKind.SEED) {
            objections.at(seed, SeedSheet.PRODUCT, "a seed; the shelf calls it " + kind.word());
        }
        FarmUnit per = product.find(ShelfSheet.PRICED_PER);
        if (per != null) {
            needs(seed, per, "it is priced per " + per.symbol(), objections);
        }
        Double price = product.find(ShelfSheet.PRICE);
        if (Boolean.TRUE.equals(seed.find(SavedColumns.SAVED)) && price != null && price != 0) {
            objections.at(
                    product, ShelfSheet.PRICE, "0, since this is saved seed: its cost is worked out from the grain");
        }
    }

    private static void planted(Tables tables, Map<String, Row> seeds, Objections objections) {
        for (Row pass : tables.rows(PassSheet.SHEET)) {
            Row seed = seeds.get(String.valueOf(pass.find(PassSheet.PRODUCT)));
            RateUnit unit = pass.find(PassSheet.RATE_UNIT);
            if (seed != null && unit != null) {
                needs(seed, unit.unit(), "it is planted in " + unit.text(), objections);
            }
        }
    }

    private static void needs(Row seed, FarmUnit unit, String why, Objections objections) {
        Column<Double> column = count(unit.dimension());
        if (column != null && seed.blank(column)) {
            objections.at(seed, column, column.kind().words() + ", since " + why);
        }
    }

    private static @Nullable Column<Double> count(Dimension dimension) {
        return switch (dimension) {
            case UNITS -> SeedSheet.PER_UNIT;
            case MASS, BUSHELS -> SeedSheet.PER_POUND;
            case SEEDS, VOLUME -> null;
        };
    }
}
