package plumbrow.documents.card;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.Product;
import plumbrow.documents.sheet.SafetySheet;

/**
 * All that a card is made from.
 *
 * @param label the product's label, where there is one
 * @param shelf the product as entered on the shelf, where it is
 * @param container what one jug or bag holds: a volume of a liquid, a weight of a dry product
 * @param today the day from which the papers' age is counted
 */
public record CardInput(
        SafetySheet sheet,
        Optional<LabelSaid> label,
        Optional<OnShelf> shelf,
        Optional<Amount> container,
        LocalDate today) {

    /** A product of the shelf with what it holds. */
    public record OnShelf(Product product, List<ActiveContent> actives) {
        public OnShelf {
            actives = List.copyOf(actives);
        }
    }

    /** A sheet alone. */
    public static CardInput of(SafetySheet sheet, LocalDate today) {
        return new CardInput(sheet, Optional.empty(), Optional.empty(), Optional.empty(), today);
    }

    public CardInput with(LabelSaid read) {
        return new CardInput(sheet, Optional.of(read), shelf, container, today);
    }

    public CardInput holding(Amount one) {
        return new CardInput(sheet, label, shelf, Optional.of(one), today);
    }

    public CardInput on(OnShelf entry) {
        return new CardInput(sheet, label, Optional.of(entry), container, today);
    }

    List<LabelSaid.Value> label(LabelSaid.Topic topic) {
        return label.map(said -> said.of(topic)).orElse(List.of());
    }
}
