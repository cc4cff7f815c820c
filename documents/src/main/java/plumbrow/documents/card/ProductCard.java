package plumbrow.documents.card;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/**
 * One page about one product.
 *
 * @param product its name as read, else as on the shelf, else "a product without a readable name"
 * @param asOf the day from which the age of the papers is counted
 * @param sections every part, in order
 * @param everyday half-lethal doses beside each other; without entries where the product's own is unknown
 */
public record ProductCard(String product, LocalDate asOf, List<CardSection> sections, EverydayScale everyday) {
    /** What must be said on every card. */
    public static final String LABEL_IS_LAW =
            "The current label is the law. Where it and this card differ, the label holds. Unknown means that nobody has"
                    + " looked it up, never that it is safe.";

    public ProductCard {
        sections = List.copyOf(sections);
    }

    public CardSection section(CardPart part) {
        return sections.stream()
                .filter(section -> section.part() == part)
                .findFirst()
                .orElseThrow();
    }

    public List<CardLine> lines(CardPart part) {
        return section(part).lines();
    }

    /** What does not agree, over all parts: to be read first. */
    public List<CardLine> differing() {
        return all().filter(line -> line.known() == Known.DIFFERS).toList();
    }

    /** How many lines are unknown. */
    public int unknown() {
        return (int) all().filter(line -> line.known() == Known.UNKNOWN).count();
    }

    private Stream<CardLine> all() {
        return sections.stream().flatMap(section -> section.lines().stream());
    }
}
