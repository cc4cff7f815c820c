package plumbrow.documents.card;

import java.util.List;

/**
 * A part of the card.
 *
 * @param cautions sentences that stand beside what is said
 */
public record CardSection(CardPart part, List<CardLine> lines, List<String> cautions) {
    public CardSection {
        lines = List.copyOf(lines);
        cautions = List.copyOf(cautions);
    }

    CardSection(CardPart part, List<CardLine> lines) {
        this(part, lines, List.of());
    }
}
