package plumbrow.documents.workbook.sheet;

import plumbrow.advice.means.PriceBreak;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;

/** Prices that fall with the quantity. */
public final class PriceBreakSheet {
    static final Column<String> FARM = FarmWords.farm();
    static final Column<String> PRODUCT = Words.product("the product");
    static final Column<Double> FROM = Column.of(
                    "from_quantity",
                    NumberKind.between(0, 1e7),
                    "from this quantity on, in the unit that the shelf prices it for",
                    "2000")
            .need();
    static final Column<Double> PRICE = Column.of(
                    "price_usd", Words.DOLLARS, "price of each unit bought once so much is bought", "4.10")
            .in("$")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<PriceBreak> SHEET = Sheet.<PriceBreak>named(
                    "price_breaks",
                    "Prices that fall with the quantity a farm buys: one row for each step. Below the first the shelf's "
                            + "price holds.",
                    season -> season.work().means().breaks())
            .optional()
            .column(FARM, PriceBreak::farm)
            .column(PRODUCT, PriceBreak::product)
            .column(FROM, PriceBreak::fromQuantity)
            .column(PRICE, PriceBreak::priceUsd)
            .column(SOURCE, PriceBreak::source)
            .once(FARM, PRODUCT, FROM)
            .build(row ->
                    new PriceBreak(row.get(FARM), row.get(PRODUCT), row.get(FROM), row.get(PRICE), row.get(SOURCE)));

    private PriceBreakSheet() {}
}
