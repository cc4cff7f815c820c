package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.documents.workbook.form.AmountColumns;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Storage;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.Together;
import plumbrow.documents.workbook.form.UnitKind;
import plumbrow.documents.workbook.form.WordKind;

/** The products at hand. */
public final class ShelfSheet {
    public static final Column<String> PRODUCT = Column.of(
                    "product", TextKind.NAME, "name of the product, used once", "Ridge 12")
            .need();
    public static final Column<ProductKind> KIND = Column.of(
                    "kind", WordKind.of(ProductKind.class, ProductKind::word), "what it is", "insecticide")
            .need();
    public static final Column<Double> PRICE = Column.of(
                    "price_usd", Words.DOLLARS, "price of one of what it is priced per; 0 for saved seed", "48.50")
            .in("$")
            .need();
    public static final Column<FarmUnit> PRICED_PER = Column.of(
                    "priced_per", UnitKind.any(), "the unit the price is for", "gal")
            .need();
    static final Column<Double> ON_HAND = Column.of("on_hand", NumberKind.atLeast(0), "what stands in the shed", "30")
            .in("on_hand_unit")
            .blankMeans("unknown");
    public static final Column<FarmUnit> ON_HAND_UNIT =
            Column.of("on_hand_unit", UnitKind.any(), "the unit of on_hand", "gal");
    private static final AmountColumns<FarmUnit> AT_HAND = AmountColumns.of(ON_HAND, ON_HAND_UNIT);
    static final Column<String> REGISTRATION = Column.of(
                    "registration", TextKind.NAME, "registration number on the label", "0000-000")
            .blankMeans("none or not read");
    static final Column<List<String>> STATES = Column.of(
                    "states",
                    new ListKind<>(Words.STATE, "postal codes parted by semicolons, such as IA; IL, or none"),
                    "states in which it is registered; none where someone looked and there is none",
                    "IA; IL")
            .blankMeans("nobody has looked");
    static final Column<List<String>> EXCLUDED = Column.of(
                    "excluded_counties",
                    new ListKind<>(
                            new CountyKind(), "counties parted by semicolons, such as IA: Adams; IL: Pike, or none"),
                    "counties where the label forbids it; none where someone looked and there is none",
                    "IA: Adams; IL: Pike")
            .blankMeans("nobody has looked");
    public static final Column<LocalDate> LABEL_DATE = Column.of(
                    "label_date", new DateKind(), "date of the label that was read", "2025-11-03")
            .blankMeans("unknown");
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<Product> SHEET = Sheet.<Product>named(
                    "shelf",
                    "One row for each product at hand, seed included.",
                    season -> season.shelf().products())
            .column(PRODUCT, Product::name)
            .column(KIND, Product::kind)
            .column(PRICE, Product::priceUsd)
            .column(PRICED_PER, Product::pricedPer)
            .amount(AT_HAND, Product::onHand)
            .column(REGISTRATION, Product::registration)
            .column(STATES, Product::states)
            .column(EXCLUDED, Product::excludedCounties)
            .column(LABEL_DATE, Product::labelDate)
            .column(SOURCE, Product::source)
            .once(PRODUCT)
            .check(Together.of(ON_HAND, ON_HAND_UNIT))
            .build(ShelfSheet::product);

    private ShelfSheet() {}

    private static Product product(Row row) {
        return new Product(
                row.get(PRODUCT),
                row.get(KIND),
                row.get(PRICE),
                row.get(PRICED_PER),
                AT_HAND.find(row),
                row.find(REGISTRATION),
                row.find(STATES),
                row.find(EXCLUDED),
                row.find(LABEL_DATE),
                row.get(SOURCE));
    }

    /** A state's code and one of its counties: "IA: Adams". */
    private record CountyKind() implements Kind<String> {
        private static final Pattern STATE_AND_NAME = Pattern.compile("(\\w\\w)\\s*:\\s*(\\S.*)");

        @Override
        public String words() {
            return "a state and a county such as IA: Adams, without the word County";
        }

        @Override
        public String read(Cell cell) throws Misread {
            Matcher parts = STATE_AND_NAME.matcher(cell.found());
            if (!parts.matches() || parts.group(2).matches("(?i).*\\bcounty")) {
                throw new Misread(words());
            }
            return Words.STATE.read(new Cell.Written(parts.group(1))) + ": " + parts.group(2);
        }

        @Override
        public Cell show(String value) {
            return new Cell.Text(value);
        }

        @Override
        public Storage<String> storage() {
            return Storage.TEXT;
        }
    }
}
