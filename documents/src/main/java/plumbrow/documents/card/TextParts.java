package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.sheet.ValueKind;

/** Parts that are what the sheet says and nothing more. */
final class TextParts {
    private TextParts() {}

    static CardSection storage(CardInput input) {
        List<CardLine> lines = new ArrayList<>();
        for (ValueKind kind : List.of(
                ValueKind.STORAGE,
                ValueKind.HANDLING,
                ValueKind.INCOMPATIBLES,
                ValueKind.FLASH_POINT,
                ValueKind.EXTINGUISHING_MEDIA)) {
            lines.add(Said.once(input.sheet(), kind));
        }
        return new CardSection(CardPart.STORAGE, lines);
    }

    static CardSection shipping(CardInput input) {
        List<CardLine> lines = new ArrayList<>();
        for (ValueKind kind : List.of(
                ValueKind.UN_NUMBER, ValueKind.TRANSPORT_CLASS, ValueKind.PACKING_GROUP, ValueKind.MARINE_POLLUTANT)) {
            lines.addAll(Said.all(input.sheet(), kind));
        }
        return new CardSection(
                CardPart.SHIPPING,
                lines,
                List.of(
                        "Never in the cab, never beside feed, seed or food. The shipping paper of the seller decides what"
                                + " must be marked; a farmer’s own exceptions (49 CFR 173.5) have limits of distance and amount."));
    }
}
