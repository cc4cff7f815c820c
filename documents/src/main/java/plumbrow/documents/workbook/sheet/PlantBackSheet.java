package plumbrow.documents.workbook.sheet;

import plumbrow.advice.shelf.PlantBack;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Column.Stricter;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** How long labels keep other crops off treated ground. */
public final class PlantBackSheet {
    static final Column<String> PRODUCT = Words.product("the product");
    public static final Column<String> NEXT_CROP = Column.of(
                    "next_crop",
                    TextKind.NAME,
                    "the crop, as the label names it; " + PlantBack.ANY_OTHER + " for every crop it does not name",
                    "soybean")
            .need();
    static final Column<Integer> DAYS = Words.whole(
                    "days",
                    3_000,
                    "days",
                    "plant-back interval from the application; 0 where the label asks for none",
                    "300")
            .called("Plant-back interval")
            .stricter(Stricter.MORE);
    static final Column<Double> PH_FROM = Column.of(
                    "ph_from", NumberKind.between(0, 14), "the row holds from this soil pH on, itself included", "7.5")
            .blankMeans("any");
    static final Column<Double> PH_BELOW = Column.of(
                    "ph_below",
                    NumberKind.between(0, 14),
                    "the row holds below this soil pH, itself not included",
                    "7.5")
            .blankMeans("any");
    static final Column<String> CONDITION = Column.of(
                    "condition", TextKind.PROSE, "what else the label asks", "at least 15 inches of rain or irrigation")
            .otherwise("")
            .blankMeans("nothing else");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<PlantBack> SHEET = Sheet.<PlantBack>named(
                    "plant_backs",
                    "How long a label keeps a crop off treated ground: one row for a product and next crop.",
                    season -> season.shelf().labels().plantBacks())
            .optional()
            .column(PRODUCT, PlantBack::product)
            .column(NEXT_CROP, PlantBack::nextCrop)
            .column(DAYS, PlantBack::days)
            .column(PH_FROM, PlantBack::forPhFrom)
            .column(PH_BELOW, PlantBack::forPhBelow)
            .column(CONDITION, PlantBack::condition)
            .column(SOURCE, PlantBack::source)
            .once(PRODUCT, NEXT_CROP, PH_FROM, PH_BELOW)
            .check(Words.below(PH_FROM, PH_BELOW))
            .build(row -> new PlantBack(
                    row.get(PRODUCT),
                    row.get(NEXT_CROP),
                    row.find(DAYS),
                    row.find(PH_FROM),
                    row.find(PH_BELOW),
                    row.get(CONDITION),
                    row.get(SOURCE)));

    private PlantBackSheet() {}
}
