package plumbrow.documents.card;

import java.time.LocalDate;
import java.util.List;
import java.util.function.UnaryOperator;
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

    /** The same card with other origins, as where its sheet was typed by a person. */
    public ProductCard from(UnaryOperator<Origin> origins) {
        return new ProductCard(
                product,
                asOf,
                sections.stream()
                        .map(section -> new CardSection(
                                section.part(),
                                section.lines().stream()
                                        .map(line -> new CardLine(
                                                line.about(),
                                                line.says(),
                                                line.known(),
                                                line.origins().stream()
                                                        .map(origins)
                                                        .toList(),
                                                line.working()))
                                        .toList(),
                                section.cautions()))
                        .toList(),
                everyday);
    }

    /** What must be seen at once. */
    public FirstScreen firstScreen() {
        return FirstScreen.of(this);
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

    /** The card in a sentence or three: the words of both papers, the worst of a spill, and how much is open. */
    public String lead() {
        StringBuilder words = new StringBuilder();
        for (CardLine line : lines(CardPart.ACUTE)) {
            if (line.about().startsWith("Signal word of") && line.known() != Known.UNKNOWN) {
                String word = line.says().split("[,:]", 2)[0];
                words.append(paper(line.about())).append(word).append(". ");
            }
        }
        lines(CardPart.SPILL).stream()
                .filter(line -> line.says().contains("REPORT it"))
                .findFirst()
                .ifPresent(line -> words.append(line.about().replace(", share of it", ""))
                        .append(": ")
                        .append(line.says().split(";", 2)[0])
                        .append(". "));
        return words.append(open()).toString();
    }

    private static String paper(String about) {
        return about.contains("quotes") ? "Label, as quoted: " : about.contains("label") ? "Label: " : "Sheet: ";
    }

    private String open() {
        int differing = differing().size();
        return (differing == 0
                        ? ""
                        : differing == 1 ? "One thing does not agree. " : differing + " things do not agree. ")
                + (unknown() == 0 ? "Nothing is unknown." : unknown() + " values are unknown.");
    }

    /** How many lines are unknown. */
    public int unknown() {
        return (int) all().filter(line -> line.known() == Known.UNKNOWN).count();
    }

    private Stream<CardLine> all() {
        return sections.stream().flatMap(section -> section.lines().stream());
    }
}
