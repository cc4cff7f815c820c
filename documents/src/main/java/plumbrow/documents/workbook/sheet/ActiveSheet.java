package plumbrow.documents.workbook.sheet;

import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Column.Stricter;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.UnitKind;

/** What products hold. */
public final class ActiveSheet {
    public static final Column<String> PRODUCT = Column.of("product", TextKind.NAME, "the product", "Ridge 12")
            .need()
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    public static final Column<String> INGREDIENT = Column.of(
                    "ingredient", TextKind.NAME, "active ingredient, ISO common name", "bifenthrin")
            .need();
    static final Column<Double> POUNDS = Column.of(
                    "pounds", NumberKind.above(0).upTo(20), "active ingredient in one of per", "2")
            .in("lb")
            .need()
            .called("Active ingredient")
            .stricter(Stricter.MORE);
    public static final Column<FarmUnit> PER = Column.of(
                    "per", UnitKind.of(FarmUnit.GAL, FarmUnit.LB), "gal of a liquid, lb of a dry product", "gal")
            .need();
    static final Column<Double> ACID = Column.of(
                    "ae_ratio", NumberKind.above(0).upTo(1), "pounds of acid in a pound of active ingredient", "0.74")
            .in("lb ae/lb ai")
            .blankMeans("not stated")
            .called("Acid in a pound of active")
            .stricter(Stricter.MORE);

    public static final Sheet<ActiveContent> SHEET = Sheet.<ActiveContent>named(
                    "actives",
                    "One row for each active ingredient of a product.",
                    season -> season.shelf().actives())
            .column(PRODUCT, ActiveContent::product)
            .column(INGREDIENT, ActiveContent::ingredient)
            .column(POUNDS, ActiveContent::pounds)
            .column(PER, ActiveContent::per)
            .column(ACID, ActiveContent::acidEquivalentRatio)
            .once(PRODUCT, INGREDIENT)
            .build(row -> new ActiveContent(
                    row.get(PRODUCT), row.get(INGREDIENT), row.get(POUNDS), row.get(PER), row.find(ACID)));

    private ActiveSheet() {}
}
