package plumbrow.app.book;

import java.util.List;
import java.util.Set;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.ProductCare;

/** What labels ask of whoever handles a product. */
final class CareRows {
    /** What is asked; what is to be worn comes with {@link #WEAR}. */
    static final RowKind<ProductCare> CARE = new RowKind<>(
            "product_care",
            "product confirmed restricted_use bulletin groundwater bees saturated_soil rain_ahead_hours wear_read source",
            season -> season.shelf().labels().cares(),
            (care, cells) -> cells.text(care.product())
                    .date(care.confirmed())
                    .word(care.restrictedUse())
                    .word(care.bulletin())
                    .word(care.groundwater())
                    .word(care.bees())
                    .word(care.saturatedSoil())
                    .whole(care.rainAheadHours())
                    .yes(care.wear() != null)
                    .text(care.source()),
            row -> new ProductCare(
                    row.text(),
                    row.maybeDate(),
                    row.word(Ask.class),
                    row.word(Ask.class),
                    row.word(Ask.class),
                    row.word(Ask.class),
                    row.word(Ask.class),
                    row.maybeWhole(),
                    row.looked(),
                    row.text()));

    static final RowKind<Listed> WEAR = Listed.kind(
            "product_wear",
            "product_care gear",
            season -> season.shelf().labels().cares(),
            care -> Listed.sorted(care.wear()));

    private CareRows() {}

    /** What is asked, with what is to be worn where somebody read it. */
    static List<ProductCare> withWear(List<ProductCare> cares, List<Listed> wear) {
        return Listed.joined(
                cares,
                wear,
                (care, listed) -> new ProductCare(
                        care.product(),
                        care.confirmed(),
                        care.restrictedUse(),
                        care.bulletin(),
                        care.groundwater(),
                        care.bees(),
                        care.saturatedSoil(),
                        care.rainAheadHours(),
                        care.wear() == null ? null : Set.copyOf(listed),
                        care.source()));
    }
}
