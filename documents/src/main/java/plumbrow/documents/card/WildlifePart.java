package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Organism;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.reference.Bound;
import plumbrow.science.reference.Choice;
import plumbrow.science.reference.HazardWords;
import plumbrow.science.reference.Property;
import plumbrow.science.reference.Substance;
import plumbrow.science.safety.PaperUnits;

/** Acute toxicity to birds, fish, small water life and bees: the sheet's values first, else what is kept. */
final class WildlifePart {
    private enum Kind {
        BIRDS(
                "Birds",
                Organism.Group.BIRD,
                List.of(Property.BOBWHITE_ORAL, Property.MALLARD_ORAL, Property.QUAIL_ORAL),
                PaperUnits::mgPerKg),
        FISH("Fish", Organism.Group.FISH, List.of(Property.TROUT), PaperUnits::mgPerLitreOfWater),
        WATER_FLEAS(
                "Small water life",
                Organism.Group.INVERTEBRATE,
                List.of(Property.DAPHNIA),
                PaperUnits::mgPerLitreOfWater),
        BEES(
                "Bees",
                Organism.Group.BEE,
                List.of(Property.BEE_CONTACT, Property.BEE_ORAL),
                unit -> unit.equals("µg/bee") ? OptionalDouble.of(1) : OptionalDouble.empty());

        private final String word;
        private final Organism.Group group;

        @SuppressWarnings("ImmutableEnumChecker") // a fixed list
        private final List<Property> properties;

        @SuppressWarnings("ImmutableEnumChecker") // a function without state
        private final Function<String, OptionalDouble> worth;

        Kind(String word, Organism.Group group, List<Property> properties, Function<String, OptionalDouble> worth) {
            this.word = word;
            this.group = group;
            this.properties = properties;
            this.worth = worth;
        }
    }

    private WildlifePart() {}

    static CardSection of(CardInput input, Ingredients ingredients) {
        List<CardLine> lines = new ArrayList<>();
        input.label(LabelSaid.Topic.BEES).forEach(value -> lines.add(Said.line(value, "Bees, by the label")));
        for (Kind kind : Kind.values()) {
            List<CardLine> said = onSheet(input.sheet(), kind);
            lines.addAll(said.isEmpty() ? kept(ingredients, kind) : said);
        }
        return new CardSection(
                CardPart.WILDLIFE,
                lines,
                List.of(
                        "Hazard words, not risks: how much gets there decides. Their limits for fish, small water life and"
                                + " bees are from memory. The label’s bee box, bloom wording and buffers decide."));
    }

    private static List<CardLine> onSheet(SafetySheet sheet, Kind kind) {
        List<CardLine> lines = new ArrayList<>();
        for (Reading.Stated stated : sheet.all(ValueKind.ECOTOXICITY)) {
            Content.Eco eco = (Content.Eco) stated.content();
            if (eco.organism().group() == kind.group && eco.measure().matches("(?:LC|EC|LD)50")) {
                String word = Bounds.of(eco.amount(), kind.worth)
                        .flatMap(bound -> HazardWords.of(kind.properties.get(0), bound))
                        .map(found -> ": " + found)
                        .orElse("");
                lines.add(new CardLine(
                        kind.word,
                        eco.words() + word,
                        word.isEmpty() ? Known.READ : Known.WORKED,
                        List.of(Said.origin(stated.quote()))));
            }
        }
        return lines;
    }

    private static List<CardLine> kept(Ingredients ingredients, Kind kind) {
        List<CardLine> lines = new ArrayList<>();
        for (Ingredients.One one : ingredients.actives()) {
            Substance substance = Objects.requireNonNull(one.kept());
            for (Property property : kind.properties) {
                substance.choose(property).ifPresent(choice -> lines.add(line(kind, one, property, choice)));
            }
        }
        if (lines.isEmpty()) {
            lines.add(CardLine.unknown(kind.word, "the sheet, section 12, where none was found"));
        }
        return lines;
    }

    private static CardLine line(Kind kind, Ingredients.One one, Property property, Choice choice) {
        var fact = choice.fact();
        Optional<Bound> number = fact.number();
        String word = number.flatMap(bound -> HazardWords.of(property, bound))
                .map(found -> ": " + found)
                .orElse("");
        return new CardLine(
                kind.word,
                one.keptName() + ", " + property.measure().words() + " "
                        + fact.value().printed() + " " + fact.unit().replace("ug/", "µg/") + word,
                Known.KEPT,
                List.of(new Origin.Reference(
                        Objects.requireNonNull(one.kept()).name(), fact.origin(), fact.backing())));
    }
}
