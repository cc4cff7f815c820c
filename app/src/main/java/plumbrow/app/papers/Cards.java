package plumbrow.app.papers;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Shelf;
import plumbrow.documents.card.CardInput;
import plumbrow.documents.card.CardMaker;
import plumbrow.documents.card.LabelSaid;
import plumbrow.documents.card.ProductCard;
import plumbrow.documents.card.RegistrationNumber;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;

/** Makes a card of papers that were read, with what the season's shelf knows of the product. */
public final class Cards {
    private Cards() {}

    /**
     * Makes it.
     *
     * @param container null where it was not said
     * @param season null where there is none
     * @param product of its shelf, to which the papers are known to belong; null where that isn't known
     */
    public static ProductCard of(
            SafetySheet sheet,
            @Nullable LabelPaper label,
            @Nullable Amount container,
            @Nullable Season season,
            @Nullable Product product,
            LocalDate today) {
        CardInput input = CardInput.of(sheet, today);
        if (label != null) {
            input = input.with(LabelSaid.of(label));
        }
        if (container != null) {
            input = input.holding(container);
        }
        Optional<CardInput.OnShelf> entry = season == null ? Optional.empty() : onShelf(season.shelf(), sheet, product);
        return CardMaker.make(entry.map(input::on).orElse(input));
    }

    /** By registration number, else by the very name. */
    private static Optional<CardInput.OnShelf> onShelf(Shelf shelf, SafetySheet sheet, @Nullable Product linked) {
        String number = said(sheet, ValueKind.REGISTRATION_NUMBER);
        String name = said(sheet, ValueKind.PRODUCT_NAME);
        Optional<Product> byNumber = shelf.products().stream()
                .filter(product -> product.registration() != null
                        && !number.isEmpty()
                        && RegistrationNumber.same(product.registration(), number))
                .findFirst();
        return Optional.ofNullable(linked)
                .or(() -> byNumber)
                .or(() -> name.isEmpty() ? Optional.empty() : shelf.product(name))
                .map(product -> new CardInput.OnShelf(product, shelf.actives(product.name())));
    }

    private static String said(SafetySheet sheet, ValueKind kind) {
        return sheet.of(kind) instanceof Reading.Stated stated ? stated.words() : "";
    }
}
