package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Column.Stricter;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;

/** What labels ask of whoever handles a product, on any crop. */
public final class CareSheet {
    static final Column<String> PRODUCT = Words.product("the product");
    public static final Column<LocalDate> CONFIRMED = Column.of(
                    "confirmed",
                    new DateKind(),
                    "the day a person held the values read against the label",
                    "2026-01-12")
            .blankMeans("nobody has");
    static final Column<Ask> RESTRICTED = Words.ask("restricted_use", "whether only certified applicators may use it")
            .called("Restricted use");
    static final Column<Ask> BULLETIN = Words.ask(
                    "bulletin",
                    "whether the label sends the user to an endangered-species bulletin for place and month")
            .called("Endangered-species bulletin");
    static final Column<Ask> GROUNDWATER = Words.ask(
                    "groundwater", "whether the label warns of ground water on sandy ground or a high water table")
            .called("Ground-water warning");
    static final Column<Ask> BEES = Words.ask(
                    "bees", "whether the label forbids spraying on bloom or where bees forage")
            .called("Forbidden on bloom");
    static final Column<Ask> SATURATED = Words.ask(
                    "saturated_soil", "whether the label forbids saturated or frozen ground")
            .called("Forbidden on saturated or frozen ground");
    static final Column<Integer> RAIN_AHEAD = Words.whole(
                    "rain_ahead_hours",
                    1_000,
                    "h",
                    "hours of rain forecast ahead for which it must not be applied; 0 where the label asks for none",
                    "48")
            .called("Hours of rain ahead")
            .stricter(Stricter.MORE);
    static final Column<List<String>> WEAR = Column.of(
                    "wear",
                    Words.gear(),
                    "what handlers must wear, word by word as the label lists it; none where it lists nothing",
                    "long sleeves; chemical-resistant gloves")
            .blankMeans("unknown")
            .called("What handlers wear")
            .stricter(Stricter.MORE);
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<ProductCare> SHEET = Sheet.<ProductCare>named(
                    "care",
                    "What each label asks of whoever handles the product, on any crop: one row for a product.",
                    season -> season.shelf().labels().cares())
            .optional()
            .column(PRODUCT, ProductCare::product)
            .column(CONFIRMED, ProductCare::confirmed)
            .column(RESTRICTED, ProductCare::restrictedUse)
            .column(BULLETIN, ProductCare::bulletin)
            .column(GROUNDWATER, ProductCare::groundwater)
            .column(BEES, ProductCare::bees)
            .column(SATURATED, ProductCare::saturatedSoil)
            .column(RAIN_AHEAD, ProductCare::rainAheadHours)
            .column(WEAR, care -> sorted(care.wear()))
            .column(SOURCE, ProductCare::source)
            .once(PRODUCT)
            .build(row -> new ProductCare(
                    row.get(PRODUCT),
                    row.find(CONFIRMED),
                    row.get(RESTRICTED),
                    row.get(BULLETIN),
                    row.get(GROUNDWATER),
                    row.get(BEES),
                    row.get(SATURATED),
                    row.find(RAIN_AHEAD),
                    set(row, WEAR),
                    row.get(SOURCE)));

    private CareSheet() {}

    static @Nullable List<String> sorted(@Nullable Set<String> entries) {
        return entries == null ? null : List.copyOf(new TreeSet<>(entries));
    }

    static @Nullable Set<String> set(Row row, Column<List<String>> column) {
        List<String> entries = row.find(column);
        return entries == null ? null : Set.copyOf(entries);
    }
}
