package plumbrow.app.book;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Trait;

/** Products with where they may be used, what they hold, what their labels say and how well they work. */
final class ShelfRows {
    /** Products; the states and counties themselves come with {@link #STATE} and {@link #COUNTY}. */
    static final RowKind<Product> PRODUCT = new RowKind<>(
            "product",
            "name kind price_usd priced_per on_hand on_hand_unit registration states_read counties_read label_date source",
            season -> season.shelf().products(),
            (product, cells) -> cells.text(product.name())
                    .word(product.kind())
                    .real(product.priceUsd())
                    .word(product.pricedPer())
                    .amount(product.onHand())
                    .text(product.registration())
                    .yes(product.states() != null)
                    .yes(product.excludedCounties() != null)
                    .date(product.labelDate())
                    .text(product.source()),
            row -> new Product(
                    row.text(),
                    row.word(ProductKind.class),
                    row.real(),
                    row.word(FarmUnit.class),
                    row.maybeAmount(),
                    row.maybeText(),
                    row.yes() ? List.of() : null,
                    row.yes() ? List.of() : null,
                    row.maybeDate(),
                    row.text()));

    static final RowKind<Place> STATE = new RowKind<>(
            "product_state",
            "product state",
            season -> season.shelf().products().stream()
                    .flatMap(product -> places(product.name(), product.states()))
                    .toList(),
            (place, cells) -> cells.text(place.product()).text(place.name()),
            row -> new Place(row.text(), row.text()));

    static final RowKind<Place> COUNTY = new RowKind<>(
            "product_excluded_county",
            "product county",
            season -> season.shelf().products().stream()
                    .flatMap(product -> places(product.name(), product.excludedCounties()))
                    .toList(),
            (place, cells) -> cells.text(place.product()).text(place.name()),
            row -> new Place(row.text(), row.text()));

    static final RowKind<Trait> TRAIT = new RowKind<>(
            "trait",
            "name trait_group insect control source",
            season -> season.shelf().traits(),
            (trait, cells) -> cells.text(trait.name())
                    .text(trait.group())
                    .text(trait.insect())
                    .distribution(trait.control())
                    .text(trait.source()),
            row -> new Trait(row.text(), row.text(), row.text(), row.distribution(), row.text()));

    static final RowKind<ActiveContent> ACTIVE = new RowKind<>(
            "active_content",
            "product ingredient pounds per ae_ratio",
            season -> season.shelf().actives(),
            (active, cells) -> cells.text(active.product())
                    .text(active.ingredient())
                    .real(active.pounds())
                    .word(active.per())
                    .real(active.acidEquivalentRatio()),
            row -> new ActiveContent(row.text(), row.text(), row.real(), row.word(FarmUnit.class), row.maybeReal()));

    static final RowKind<LabelUse> LABEL_USE = new RowKind<>(
            "label_use",
            "product crop low_rate low_rate_unit high_rate high_rate_unit less_forbidden season_max season_max_unit "
                    + "most_applications phi_days source",
            season -> season.shelf().labelUses(),
            (use, cells) -> cells.text(use.product())
                    .word(use.crop())
                    .amount(use.lowRate())
                    .amount(use.highRate())
                    .word(use.lessForbidden())
                    .amount(use.seasonMax())
                    .whole(use.mostApplications())
                    .whole(use.preHarvestDays())
                    .text(use.source()),
            row -> new LabelUse(
                    row.text(),
                    row.word(Crop.class),
                    row.maybeAmount(),
                    row.maybeAmount(),
                    row.word(Ask.class),
                    row.maybeAmount(),
                    row.maybeWhole(),
                    row.maybeWhole(),
                    row.text()));

    static final RowKind<ActiveLimit> ACTIVE_LIMIT = new RowKind<>(
            "active_limit",
            "product crop ingredient season_max_lb_ac basis source",
            season -> season.shelf().activeLimits(),
            (limit, cells) -> cells.text(limit.product())
                    .word(limit.crop())
                    .text(limit.ingredient())
                    .real(limit.seasonMaxPounds())
                    .word(limit.basis())
                    .text(limit.source()),
            row -> new ActiveLimit(
                    row.text(),
                    row.word(Crop.class),
                    row.text(),
                    row.maybeReal(),
                    row.word(ActiveLimit.Basis.class),
                    row.text()));

    static final RowKind<Control> CONTROL = new RowKind<>(
            "control",
            "product pest rate rate_unit share source",
            season -> season.shelf().controls(),
            (control, cells) -> cells.text(control.product())
                    .text(control.pest())
                    .amount(control.rate())
                    .distribution(control.share())
                    .text(control.source()),
            row -> new Control(row.text(), row.text(), row.amount(), row.distribution(), row.text()));

    /** A state in which a product is registered, or a county from which its label excludes it. */
    record Place(String product, String name) {}

    private ShelfRows() {}

    /** The products with the places that somebody read on their labels. */
    static List<Product> placed(List<Product> products, List<Place> states, List<Place> counties) {
        Map<String, List<Place>> statesOf = Grouped.by(Place::product, states);
        Map<String, List<Place>> countiesOf = Grouped.by(Place::product, counties);
        return products.stream()
                .map(product -> new Product(
                        product.name(),
                        product.kind(),
                        product.priceUsd(),
                        product.pricedPer(),
                        product.onHand(),
                        product.registration(),
                        product.states() == null ? null : names(statesOf.get(product.name())),
                        product.excludedCounties() == null ? null : names(countiesOf.get(product.name())),
                        product.labelDate(),
                        product.source()))
                .toList();
    }

    private static Stream<Place> places(String product, @Nullable List<String> names) {
        return names == null ? Stream.of() : names.stream().map(name -> new Place(product, name));
    }

    private static List<String> names(@Nullable List<Place> places) {
        return places == null ? List.of() : places.stream().map(Place::name).toList();
    }
}
