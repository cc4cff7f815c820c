package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.sheet.ValueKind;

/** What to do first, in the sheet's own words, and the numbers to call. */
final class FirstAidPart {
    private static final Origin NUMBERS =
            new Origin.Source("US EPA, In Case of Pesticide Emergency: 911 and poison control; number from memory");
    private static final Origin RESPONSE =
            new Origin.Source("42 USC 9603(a); number as in the Florida guidelines (docslib.org/doc/1567424)");

    private FirstAidPart() {}

    static CardSection of(CardInput input) {
        List<CardLine> lines = new ArrayList<>();
        lines.add(new CardLine("Unconscious, convulsing, not breathing", "911", Known.RULE, List.of(NUMBERS)));
        lines.add(new CardLine("Poison control, day and night", "1-800-222-1222", Known.RULE, List.of(NUMBERS)));
        lines.addAll(Said.all(input.sheet(), ValueKind.EMERGENCY_PHONE));
        lines.add(new CardLine("Spill: National Response Center", "1-800-424-8802", Known.RULE, List.of(RESPONSE)));
        input.label(LabelSaid.Topic.FIRST_AID).forEach(value -> lines.add(Said.line(value, "Label")));
        lines.addAll(Said.all(input.sheet(), ValueKind.FIRST_AID));
        return new CardSection(
                CardPart.FIRST_AID, lines, List.of("Have the label at hand when you call, and take it to the doctor."));
    }
}
