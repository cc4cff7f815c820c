package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;

/** Name, registration, what is in it, whether its use is restricted; the two papers must speak of one product. */
final class IdentityPart {
    private IdentityPart() {}

    static CardSection of(CardInput input, Ingredients ingredients) {
        List<CardLine> lines = new ArrayList<>();
        lines.add(Said.once(input.sheet(), ValueKind.PRODUCT_NAME));
        registration(input, lines);
        restricted(input, lines);
        for (Ingredients.One one : ingredients.all()) {
            Amount percent = one.percent();
            lines.add(new CardLine(
                    one.name(),
                    (percent == null ? "share not stated" : percent.words())
                            + (one.cas().isEmpty() ? ", no CAS number that can be used" : ", CAS " + one.cas()),
                    percent == null ? Known.UNKNOWN : Known.READ,
                    List.of(one.origin())));
        }
        if (ingredients.all().isEmpty()) {
            lines.add(CardLine.unknown("Ingredients", "the sheet, section 3, and the label's ingredient statement"));
        }
        return new CardSection(CardPart.IDENTITY, lines);
    }

    private static void registration(CardInput input, List<CardLine> lines) {
        CardLine sheet = Said.once(input.sheet(), ValueKind.REGISTRATION_NUMBER);
        List<LabelSaid.Value> label = input.label(LabelSaid.Topic.REGISTRATION);
        Optional<String> shelf = input.shelf()
                .flatMap(entry -> Optional.ofNullable(entry.product().registration()));
        boolean read = input.sheet().of(ValueKind.REGISTRATION_NUMBER) instanceof Reading.Stated;
        if (read
                && label.size() == 1
                && !RegistrationNumber.same(sheet.says(), label.get(0).words())) {
            List<Origin> origins = new ArrayList<>(sheet.origins());
            origins.add(Said.origin(label.get(0)));
            lines.add(new CardLine(
                    sheet.about(),
                    "sheet " + sheet.says() + ", label " + label.get(0).words()
                            + ": these may be papers of two products",
                    Known.DIFFERS,
                    origins));
        } else if (!read && !label.isEmpty()) {
            lines.add(Said.line(label.get(0), sheet.about()));
        } else if (!read && shelf.isPresent()) {
            lines.add(new CardLine(
                    sheet.about(),
                    shelf.get(),
                    Known.READ,
                    List.of(new Origin.Shelf(input.shelf().get().product().source()))));
        } else {
            lines.add(sheet);
        }
    }

    private static void restricted(CardInput input, List<CardLine> lines) {
        List<LabelSaid.Value> said = input.label(LabelSaid.Topic.RESTRICTED_USE);
        if (input.label().isEmpty()) {
            lines.add(CardLine.unknown("Restricted use", "the top of the label"));
        } else if (said.isEmpty()) {
            lines.add(CardLine.unknown(
                    "Restricted use", "the top of the label; no restricted-use statement was found in the one read"));
        } else {
            said.forEach(value -> lines.add(Said.line(value, "Restricted use")));
        }
    }
}
