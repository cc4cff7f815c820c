package plumbrow.documents.workbook.sheet;

import plumbrow.advice.tank.Addition;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

/** What goes into the tank with products. */
public final class AdditionSheet {
    static final Column<String> PRODUCT = Words.product("the product with which it goes");
    static final Column<String> FIELD = Column.of("field", TextKind.NAME, "the only field for which it does", "East 80")
            .blankMeans("all fields")
            .from(FieldSheet.SHEET, FieldSheet.FIELD);
    static final Column<String> ADDITION = Column.of(
                    "addition", TextKind.NAME, "the adjuvant or conditioner, a product of the shelf", "Steadfall NIS")
            .need()
            .from(ShelfSheet.SHEET, ShelfSheet.PRODUCT);
    static final Column<Double> RATE = Column.of("rate", NumberKind.above(0).upTo(1000), "how much of it", "0.25")
            .need();
    static final Column<Addition.Basis> BASIS = Column.of(
                    "basis",
                    WordKind.of(Addition.Basis.class, Addition.Basis::word),
                    "what the rate is of; percent and per 100 gallons are of the finished spray",
                    "% v/v")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Addition> SHEET = Sheet.<Addition>named(
                    "additions",
                    "Adjuvants and conditioners that go into the tank with a product. Their price is no part of the"
                            + " comparison.",
                    season -> season.work().means().tank().additions())
            .optional()
            .column(PRODUCT, Addition::product)
            .column(FIELD, Addition::field)
            .column(ADDITION, Addition::addition)
            .column(RATE, Addition::rate)
            .column(BASIS, Addition::basis)
            .column(SOURCE, Addition::source)
            .once(PRODUCT, FIELD, ADDITION)
            .check(AdditionSheet::checkOther)
            .build(row -> new Addition(
                    row.get(PRODUCT),
                    row.find(FIELD),
                    row.get(ADDITION),
                    row.get(RATE),
                    row.get(BASIS),
                    row.get(SOURCE)));

    private AdditionSheet() {}

    private static void checkOther(Row row, Objections objections) {
        String product = row.find(PRODUCT);
        if (product != null && product.equals(row.find(ADDITION))) {
            objections.at(row, ADDITION, "another product than the one with which it goes");
        }
    }
}
