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
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.ActiveSheet;
import plumbrow.documents.workbook.sheet.ControlSheet;
import plumbrow.documents.workbook.sheet.LabelUseSheet;
import plumbrow.documents.workbook.sheet.LogSheet;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.RatingSheet;
import plumbrow.documents.workbook.sheet.ShelfSheet;
import plumbrow.documents.workbook.sheet.SoilRateSheet;

/**
 * All amounts of a product are of one kind: a product priced by the gallon is not put out by the pound. Seed may be
 * counted, bagged or weighed, since its seeds per bag and per pound are known, but is no liquid.
 */
final class UnitsAgree implements Rule {
    @Override
    public void check(Tables tables, Objections objections) {
        Map<String, Row> shelf = tables.index(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
        check(tables, shelf, ShelfSheet.SHEET, ShelfSheet.PRODUCT, ShelfSheet.PRICED_PER, objections);
        check(tables, shelf, ShelfSheet.SHEET, ShelfSheet.PRODUCT, ShelfSheet.ON_HAND_UNIT, objections);
        check(tables, shelf, ActiveSheet.SHEET, ActiveSheet.PRODUCT, ActiveSheet.PER, objections);
        check(tables, shelf, LabelUseSheet.SHEET, LabelUseSheet.PRODUCT, LabelUseSheet.RATE_UNIT, objections);
        check(tables, shelf, LabelUseSheet.SHEET, LabelUseSheet.PRODUCT, LabelUseSheet.SEASON_MAX_UNIT, objections);
        check(tables, shelf, ControlSheet.SHEET, ControlSheet.PRODUCT, ControlSheet.RATE_UNIT, objections);
        check(tables, shelf, RatingSheet.SHEET, RatingSheet.PRODUCT, RatingSheet.RATE_UNIT, objections);
        check(tables, shelf, SoilRateSheet.SHEET, SoilRateSheet.PRODUCT, SoilRateSheet.RATE_UNIT, objections);
        check(tables, shelf, LogSheet.SHEET, LogSheet.PRODUCT, LogSheet.RATE_UNIT, objections);
        check(tables, shelf, PassSheet.SHEET, PassSheet.PRODUCT, PassSheet.RATE_UNIT, objections);
    }

    private static void check(
            Tables tables,
            Map<String, Row> shelf,
            Sheet<?> sheet,
            Column<String> product,
            Column<?> unit,
            Objections objections) {
        for (Row row : tables.rows(sheet)) {
            boolean own = sheet.name().equals(ShelfSheet.SHEET.name());
            Row priced = own ? row : shelf.get(String.valueOf(row.find(product)));
            Dimension dimension = dimension(row.find(unit));
            if (priced != null && dimension != null) {
                check(row, unit, dimension, priced, objections);
            }
        }
    }

    private static void check(Row row, Column<?> unit, Dimension dimension, Row priced, Objections objections) {
        FarmUnit per = priced.find(ShelfSheet.PRICED_PER);
        ProductKind kind = priced.find(ShelfSheet.KIND);
        if (kind == ProductKind.SEED) {
            if (dimension == Dimension.VOLUME) {
                objections.at(
                        row,
                        unit,
                        "seeds, units, a weight or bushels, since " + priced.found(ShelfSheet.PRODUCT) + " is seed");
            }
        } else if (per != null && kind != null && per.dimension() != dimension) {
            objections.at(
                    row,
                    unit,
                    per.dimension().words() + ", since " + priced.found(ShelfSheet.PRODUCT) + " is priced per "
                            + per.symbol());
        }
    }

    private static @Nullable Dimension dimension(@Nullable Object unit) {
        return unit instanceof FarmUnit sold
                ? sold.dimension()
                : unit instanceof RateUnit rate ? rate.unit().dimension() : null;
    }
}
