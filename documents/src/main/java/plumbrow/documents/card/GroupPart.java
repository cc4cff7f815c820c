package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import plumbrow.science.reference.Property;
import plumbrow.science.reference.Substance;

/** Groups of action: from the label's box, else by ingredient from the reference data. */
final class GroupPart {
    private GroupPart() {}

    static CardSection of(CardInput input, Ingredients ingredients) {
        List<CardLine> lines = new ArrayList<>();
        input.label(LabelSaid.Topic.GROUP).forEach(value -> lines.add(Said.line(value, "Label")));
        for (Ingredients.One one : ingredients.actives()) {
            Substance kept = Objects.requireNonNull(one.kept());
            kept.choose(Property.GROUP_NUMBER)
                    .ifPresentOrElse(
                            choice -> lines.add(new CardLine(
                                    one.keptName(),
                                    "group " + choice.fact().value().printed() + " ("
                                            + choice.fact().unit() + ")",
                                    Known.KEPT,
                                    List.of(new Origin.Reference(
                                            kept.name(),
                                            choice.fact().origin(),
                                            choice.fact().backing())))),
                            () -> lines.add(CardLine.unknown(one.name(), "the group box on the label")));
        }
        if (lines.isEmpty()) {
            lines.add(
                    CardLine.unknown("Groups", "the group box on the label; no ingredient of the sheet is kept here"));
        }
        return new CardSection(CardPart.GROUPS, lines);
    }
}
