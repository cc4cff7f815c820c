package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;

/** Makes cards. The same papers and day give the same card. */
public final class CardMaker {
    private static final String NAMELESS = "A product without a readable name";

    private CardMaker() {}

    public static ProductCard make(CardInput input) {
        Ingredients ingredients = Ingredients.of(input.sheet());
        EverydayScale everyday = EverydayPart.scale(input);
        List<CardSection> sections = new ArrayList<>();
        sections.add(FirstAidPart.of(input));
        sections.add(WearPart.of(input));
        sections.add(SpillPart.of(input, ingredients));
        sections.add(IdentityPart.of(input, ingredients));
        sections.add(GroupPart.of(input, ingredients));
        sections.add(AcutePart.of(input, ingredients));
        sections.add(TextParts.storage(input));
        sections.add(TextParts.shipping(input));
        sections.add(VapourPart.of(input, ingredients));
        sections.add(WaterPart.of(ingredients));
        sections.add(WildlifePart.of(input, ingredients));
        sections.add(EverydayPart.of(everyday));
        sections.add(PapersPart.of(input));
        return new ProductCard(name(input), input.today(), sections, everyday);
    }

    private static String name(CardInput input) {
        if (input.sheet().of(ValueKind.PRODUCT_NAME) instanceof Reading.Stated stated) {
            return stated.words();
        }
        return input.label(LabelSaid.Topic.PRODUCT_NAME).stream()
                .map(LabelSaid.Value::words)
                .findFirst()
                .or(() -> input.shelf().map(entry -> entry.product().name()))
                .orElse(NAMELESS);
    }
}
