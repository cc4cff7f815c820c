package plumbrow.documents.sheet.part;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.sheet.BodyPart;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.NoDataWords;
import plumbrow.documents.sheet.section.Item;
import plumbrow.documents.sheet.section.Label;

/** Advice in running text: first aid, fire, spill, handling, protection, stability, disposal. */
final class TextPart implements Part {
    private static final Map<Label, Route> FIRST_AID = new EnumMap<>(Map.of(
            Label.SWALLOWED, Route.SWALLOWED,
            Label.ON_SKIN, Route.SKIN,
            Label.IN_EYES, Route.EYES,
            Label.INHALED, Route.INHALED));
    private static final Map<Label, BodyPart> PROTECTION = new EnumMap<>(Map.of(
            Label.EYE_PROTECTION, BodyPart.EYES,
            Label.HAND_PROTECTION, BodyPart.HANDS,
            Label.SKIN_PROTECTION, BodyPart.SKIN,
            Label.BREATHING_PROTECTION, BodyPart.BREATHING,
            Label.IN_EYES, BodyPart.EYES,
            Label.ON_SKIN, BodyPart.SKIN));

    /** A kind of text, where it stands and under which label. */
    private record Place(ValueKind kind, SheetSection section, Label label, boolean orWhole) {}

    private static final List<Place> PLACES = List.of(
            new Place(ValueKind.EXTINGUISHING_MEDIA, SheetSection.FIRE, Label.EXTINGUISHING, false),
            new Place(ValueKind.FIRE_FIGHTING, SheetSection.FIRE, Label.FIRE_ADVICE, false),
            new Place(ValueKind.SPILL, SheetSection.RELEASE, Label.CLEAN_UP, true),
            new Place(ValueKind.HANDLING, SheetSection.HANDLING, Label.HANDLING, true),
            new Place(ValueKind.STORAGE, SheetSection.HANDLING, Label.STORAGE, false),
            new Place(ValueKind.CHEMICAL_STABILITY, SheetSection.STABILITY, Label.STABLE, false),
            new Place(ValueKind.INCOMPATIBLES, SheetSection.STABILITY, Label.INCOMPATIBLE, false),
            new Place(ValueKind.DISPOSAL, SheetSection.DISPOSAL, Label.DISPOSAL, true));

    /** What stands under the routes from here on is what the harm looks like, not what helps. */
    private static final Pattern SYMPTOMS = Pattern.compile(
            "(?i)(?:\\d\\.\\d\\.?\\s*)?(?:most important symptoms|(?:potential )?(?:acute |chronic )*health effects|over-?exposure signs|symptoms)\\b");

    /** A label within the label: "Skin protection / Other | Wear …". */
    private static final Pattern OTHER = Pattern.compile("^[Oo]ther\\s(?=\\p{Lu})");

    /** A column of exposure limits, not what to wear. */
    private static final Pattern LIMITS = Pattern.compile("\\b(?:TWA|STEL|STEV|TWAEV)\\b");

    /** A sentence does not end so: the rest stands somewhere else. */
    private static final Pattern BREAKS_OFF = Pattern.compile(
            "(?i).*(?:[,(–-]|\\b(?:and|or|at|the|an?|of|to|with|for|in|by|if|until|from|is|are|be|into))\\s*",
            Pattern.DOTALL);

    private static final Pattern LEAD = Pattern.compile("^[\\s:–-]+");

    @Override
    public void read(SheetText sheet, Readings readings) {
        PLACES.forEach(place -> place(place, sheet, readings));
        boolean aided = false;
        for (Item item : sheet.items(SheetSection.FIRST_AID)) {
            if (aided
                    && (item.is(Label.SYMPTOMS)
                            || SYMPTOMS.matcher(item.all().text()).lookingAt())) {
                break;
            }
            Route route = item.label().map(FIRST_AID::get).orElse(null);
            if (route != null && says(item)) {
                aided = true;
                String help = prose(item.value());
                if (BREAKS_OFF.matcher(help).matches()) {
                    readings.unclear(
                            ValueKind.FIRST_AID,
                            "the sentence breaks off",
                            item.value().quote());
                } else {
                    readings.state(
                            ValueKind.FIRST_AID,
                            new Content.FirstAid(route, help),
                            item.value().quote());
                }
            }
        }
        for (Item item : sheet.items(SheetSection.EXPOSURE)) {
            BodyPart part = item.label().map(PROTECTION::get).orElse(null);
            if (part != null
                    && says(item)
                    && !LIMITS.matcher(item.value().text()).find()) {
                readings.state(
                        ValueKind.PROTECTION,
                        new Content.Protection(part, prose(item.value())),
                        item.value().quote());
            }
        }
    }

    private static void place(Place place, SheetText sheet, Readings readings) {
        boolean labelled = false;
        for (Item item : sheet.items(place.section)) {
            if (!item.is(place.label) || item.value().isEmpty() || readings.has(place.kind)) {
                continue;
            }
            labelled = true;
            keep(place.kind, item.value(), readings);
        }
        boolean anyLabel = sheet.items(place.section).stream()
                .anyMatch(item -> item.label().isPresent() && !item.value().isEmpty());
        if (!labelled && place.orWhole && !anyLabel) {
            Passage whole = sheet.whole(place.section);
            if (!whole.isEmpty()) {
                keep(place.kind, whole, readings);
            }
        }
    }

    private static void keep(ValueKind kind, Passage text, Readings readings) {
        int noData = NoDataWords.end(text.text());
        if (noData >= 0 && Prose.of(text.text().substring(noData)).length() < 4) {
            readings.noData(kind, text.quote());
        } else {
            readings.state(kind, new Content.Text(prose(text)), text.quote());
        }
    }

    private static boolean says(Item item) {
        int noData = NoDataWords.end(item.value().text());
        return !item.value().isEmpty() && (noData < 0 || item.value().text().length() - noData > 3);
    }

    private static String prose(Passage passage) {
        return LEAD.matcher(Prose.of(OTHER.matcher(passage.text()).replaceFirst("")))
                .replaceFirst("");
    }
}
