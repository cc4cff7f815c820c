package plumbrow.documents.workbook.sheet;

import plumbrow.advice.means.Supply;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;

/** Products that can't be had without end. */
public final class SupplySheet {
    static final Column<String> FARM = FarmWords.farm();
    static final Column<String> PRODUCT = Words.product("the product");
    static final Column<Double> MOST = Column.of(
                    "most_quantity",
                    NumberKind.between(0, 1e7),
                    "the most the farm can buy, in the unit that the shelf prices it for",
                    "60")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Supply> SHEET = Sheet.<Supply>named(
                    "supplies",
                    "Products a farm can buy only so much of: one row for each.",
                    season -> season.work().means().supplies())
            .optional()
            .column(FARM, Supply::farm)
            .column(PRODUCT, Supply::product)
            .column(MOST, Supply::mostQuantity)
            .column(SOURCE, Supply::source)
            .once(FARM, PRODUCT)
            .build(row -> new Supply(row.get(FARM), row.get(PRODUCT), row.get(MOST), row.get(SOURCE)));

    private SupplySheet() {}
}
