package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.documents.sheet.ValueKind;

/** Protective equipment: the label's first, because it is the law; then the sheet's. */
final class WearPart {
    private WearPart() {}

    static CardSection of(CardInput input) {
        List<CardLine> lines = new ArrayList<>();
        gear(input, lines);
        if (lines.isEmpty()) {
            lines.add(CardLine.unknown("By the label", "the label's list of protective equipment, which must be worn"));
        }
        lines.addAll(Said.all(input.sheet(), ValueKind.PROTECTION));
        List<LabelSaid.Value> reentry = input.label(LabelSaid.Topic.REENTRY);
        if (reentry.isEmpty()) {
            lines.add(
                    CardLine.unknown("Back into the field after", "the restricted-entry interval (REI) on the label"));
        }
        reentry.forEach(value -> lines.add(Said.line(value, "Back into the field after")));
        return new CardSection(
                CardPart.WEAR,
                lines,
                List.of(
                        "The label’s list must be worn. Where the sheet asks for more, wear that too; of products mixed in"
                                + " a tank, the most protective of each."));
    }

    /** What the label asks of the same people stands together. */
    private static void gear(CardInput input, List<CardLine> lines) {
        Map<String, CardLine> byTask = new LinkedHashMap<>();
        for (LabelSaid.Value value : input.label(LabelSaid.Topic.GEAR)) {
            CardLine line = Said.line(value, "Label");
            byTask.merge(line.about() + line.known(), line, WearPart::together);
        }
        lines.addAll(byTask.values());
    }

    private static CardLine together(CardLine one, CardLine other) {
        Set<Origin> origins = new LinkedHashSet<>(one.origins());
        origins.addAll(other.origins());
        return new CardLine(one.about(), one.says() + "; " + other.says(), one.known(), List.copyOf(origins));
    }
}
