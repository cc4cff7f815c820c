package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.ValueKind;

/**
 * Acute poison by route: in the terms of the sheet held against the sheet, in those of the label held against the label.
 * The two are kept apart and neither is corrected from the other.
 */
final class AcutePart {
    private static final List<Route> ROUTES = List.of(Route.SWALLOWED, Route.SKIN, Route.INHALED);

    private AcutePart() {}

    static CardSection of(CardInput input, Ingredients ingredients) {
        Map<Route, OwnDose> doses = new EnumMap<>(Route.class);
        List<CardLine> lines = new ArrayList<>();
        for (Route route : ROUTES) {
            OwnDose.of(input.sheet(), route)
                    .ifPresentOrElse(
                            dose -> {
                                doses.put(route, dose);
                                lines.add(Said.line(dose.stated(), Words.capital(route.word())));
                            },
                            () -> without(input, ingredients, route, lines));
        }
        SheetTerms.write(input.sheet(), doses, lines);
        IrritationPart.write(input.sheet(), lines);
        LabelTerms.write(input, doses, lines);
        return new CardSection(
                CardPart.ACUTE,
                lines,
                List.of("The sheet’s word (Danger, Warning) and the label’s (DANGER, WARNING, CAUTION) follow different"
                        + " rules. Neither corrects the other, and a difference between them is no fault."));
    }

    private static void without(CardInput input, Ingredients ingredients, Route route, List<CardLine> lines) {
        List<Reading.Stated> others = OwnDose.stated(input.sheet(), route);
        boolean unclear = input.sheet().readings().stream()
                .anyMatch(reading -> reading.kind() == ValueKind.ACUTE_TOXICITY && reading instanceof Reading.Unclear);
        lines.add(CardLine.unknown(
                Words.capital(route.word()),
                "the sheet, section 11: "
                        + (others.isEmpty()
                                ? unclear ? "a value there can’t be read in one way" : "none was found"
                                : "no value of the product itself that can be classed; what it gives stands below")));
        MixturePart.of(input.sheet(), ingredients, route).ifPresent(lines::add);
        others.forEach(stated -> lines.add(Said.line(stated, Words.capital(route.word()) + ", as given")));
    }
}
