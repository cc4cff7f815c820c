package plumbrow.documents.sheet.part;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.AmountText;
import plumbrow.documents.sheet.grammar.Circumstance;
import plumbrow.documents.sheet.grammar.Family;
import plumbrow.documents.sheet.grammar.NoDataWords;
import plumbrow.documents.sheet.section.Item;
import plumbrow.documents.sheet.section.Label;

/** Physical properties, each with its temperature and method; a flash point also from the fire section of older sheets. */
final class PropertyPart implements Part {
    private static final int CONDITIONS_WITHIN = 45;

    /** A property, its label and the units it comes in, the likeliest first. */
    private record Property(ValueKind kind, Label label, List<Family> families) {}

    private static final List<Property> PROPERTIES = List.of(
            new Property(ValueKind.VAPOUR_PRESSURE, Label.VAPOUR_PRESSURE, List.of(Family.PRESSURE)),
            new Property(ValueKind.BOILING_POINT, Label.BOILING_POINT, List.of(Family.TEMPERATURE)),
            new Property(ValueKind.FLASH_POINT, Label.FLASH_POINT, List.of(Family.TEMPERATURE)),
            new Property(ValueKind.DENSITY, Label.DENSITY, List.of(Family.DENSITY, Family.BARE)),
            new Property(ValueKind.PH, Label.PH, List.of(Family.BARE)),
            new Property(ValueKind.SOLUBILITY, Label.SOLUBILITY, List.of(Family.WATER)),
            new Property(ValueKind.PARTITION, Label.PARTITION, List.of(Family.BARE)));

    private static final Pattern SOLUBLE = Pattern.compile(
            "(?i)\\W*(?:(?:in )?water\\s*[:,]?\\s*)?((?:completely |fully |partially |partly |slightly |very |readily |practically |easily |not |forms? (?:an? )?)*"
                    + "(?:soluble|miscible|insoluble|dispersible|emulsifi(?:es|able)|disperses|emulsion|suspension|dissolves|negligible)\\b[^.;\\t\\n]*).*");
    private static final Pattern LOG = Pattern.compile("(?i)\\blog\\b|log\\s?10|log(?:[KP]ow)|\\blog\\s?[KP]");
    private static final Pattern OTHER_SOLVENT =
            Pattern.compile("(?i)\\b(?:acetone|methanol|hexane|xylene|toluene|ethanol|organic)\\b");
    private static final Pattern PHASES =
            Pattern.compile("(?i)^\\W*n?-?\\s?octanol\\s?[-/]?\\s?(?:water)?\\)?\\s?:?\\s*");
    private static final Pattern WATER = Pattern.compile("(?i)\\bwater\\b");
    private static final Pattern SOLUTION = Pattern.compile(
            "\\d+(?:[.,]\\d+)?\\s?(?:%|g/[lL])[^\\t\\n:]{0,40}?(?:solution|dispersion|suspension|emulsion|in water|w/[wv])?\\)?\\s*[:=]?");

    @Override
    public void read(SheetText sheet, Readings readings) {
        for (Property property : PROPERTIES) {
            SheetSection[] where = property.kind == ValueKind.FLASH_POINT
                    ? new SheetSection[] {SheetSection.PROPERTIES, SheetSection.FIRE}
                    : new SheetSection[] {SheetSection.PROPERTIES};
            for (Item item : sheet.items(property.label, where)) {
                if (!item.value().isEmpty()) {
                    item(property, item, sheet, readings);
                }
            }
        }
    }

    private static void item(Property property, Item item, SheetText sheet, Readings readings) {
        Passage value = switch (property.kind) {
            case SOLUBILITY -> inWater(item);
            case PARTITION -> withoutPhases(item.value());
            default -> item.value();
        };
        if (value.isEmpty()) {
            return;
        }
        String text = value.text();
        int noData = NoDataWords.end(text);
        if (noData >= 0) {
            readings.noData(property.kind, value.quote(0, Math.max(noData, 1)));
            return;
        }
        AmountText amount = amount(property, text, sheet);
        if (amount == null) {
            words(property.kind, value, readings);
        } else if (!amount.doubt().isEmpty()) {
            readings.unclear(property.kind, amount.doubt(), value.quote(amount.from(), amount.to()));
        } else {
            state(property, item, value, amount, sheet, readings);
        }
    }

    private static @Nullable AmountText amount(Property property, String text, SheetText sheet) {
        String searched = property.kind == ValueKind.PH ? blanked(text) : text;
        for (Family family : property.families) {
            AmountText amount = AmountText.first(searched, family, sheet.style());
            if (amount != null) {
                return amount;
            }
        }
        return null;
    }

    /** "1 % solution: 6.5" gives the strength before the value. */
    private static String blanked(String text) {
        return SOLUTION.matcher(text).replaceAll(found -> " ".repeat(found.end() - found.start()));
    }

    private static void state(
            Property property, Item item, Passage value, AmountText found, SheetText sheet, Readings readings) {
        Amount amount = found.amount();
        String text = value.text();
        if (property.kind == ValueKind.PARTITION && !logarithm(item)) {
            readings.unclear(
                    property.kind,
                    "the sheet does not say whether "
                            + text.substring(found.from(), found.to()).strip() + " is the logarithm",
                    value.quote(found.from(), found.to()));
            return;
        }
        if (property.kind == ValueKind.PH && (amount.low() < -1 || amount.high() > 15)) {
            readings.unclear(property.kind, amount.words() + " is no pH", value.quote(found.from(), found.to()));
            return;
        }
        if (property.kind == ValueKind.VAPOUR_PRESSURE) {
            if (amount.unit().equals("MPa")) {
                readings.unclear(
                        property.kind,
                        "MPa is a billion mPa; nothing on a farm has such a vapour pressure",
                        value.quote(found.from(), found.to()));
                return;
            }
            if (severalSubstances(text, found, sheet)) {
                readings.unclear(property.kind, "several values stand there", value.quote());
                return;
            }
        }
        int to = Math.min(text.length(), found.to() + CONDITIONS_WITHIN);
        String after = text.substring(found.to(), to);
        String before = item.head().text() + " " + text.substring(0, found.from());
        Conditions conditions = property.families.contains(Family.TEMPERATURE)
                ? new Conditions(null, null, Circumstance.method(item.head().text() + " " + text))
                : new Conditions(celsius(after, before), null, "");
        readings.state(
                property.kind,
                new Content.Measured(amount.under(conditions)),
                value.quote(found.from(), end(text, found)));
    }

    /** The quote takes the temperature or the brackets right behind the amount with it. */
    private static int end(String text, AmountText found) {
        Matcher behind = Pattern.compile("^\\s*(?:\\([^)]{0,40}\\)|(?:@|at)\\s*\\d{1,3}(?:[.,]\\d)?\\s?°?\\s?[CF]\\b)")
                .matcher(text.substring(found.to()));
        return behind.find() ? found.to() + behind.end() : found.to();
    }

    private static @Nullable Double celsius(String after, String before) {
        Double behind = Circumstance.celsius(after);
        return behind == null ? Circumstance.celsius(before) : behind;
    }

    /** Other pressures that are neither the same in another unit nor at another temperature. */
    private static boolean severalSubstances(String text, AmountText first, SheetText sheet) {
        return AmountText.all(text.substring(first.to()), Family.PRESSURE, sheet.style()).stream()
                .anyMatch(other -> !Alike.same(first.amount(), other.amount())
                        && Circumstance.celsius(text.substring(first.to())) == null);
    }

    private static boolean logarithm(Item item) {
        return LOG.matcher(item.head().text()).find()
                || LOG.matcher(item.value().text()).find();
    }

    private static void words(ValueKind kind, Passage value, Readings readings) {
        Matcher soluble = SOLUBLE.matcher(value.text().replace('\n', ' '));
        if (kind == ValueKind.SOLUBILITY && soluble.matches()) {
            readings.state(
                    kind, new Content.Text(Prose.of(soluble.group(1))), value.quote(soluble.start(1), soluble.end(1)));
        } else if (!readings.has(kind)) {
            readings.unclear(kind, "no number with a unit that is known stands there", value.quote());
        }
    }

    /** "Partition coefficient: n-octanol/water" has its label's end behind the colon. */
    private static Passage withoutPhases(Passage value) {
        Matcher phases = PHASES.matcher(value.text());
        return phases.find() ? value.from(phases.end()) : value;
    }

    /** Of several solvents the stretch that speaks of water; nothing where only others are named. */
    private static Passage inWater(Item item) {
        Passage value = item.value();
        String text = value.text();
        boolean headSaysWater = WATER.matcher(item.head().text()).find();
        Matcher other = OTHER_SOLVENT.matcher(text);
        if (!other.find()) {
            return value;
        }
        Matcher water = WATER.matcher(text);
        if (!water.find()) {
            return headSaysWater ? value.part(0, other.start()) : value.part(0, 0);
        }
        if (water.start() < other.start()) {
            return value.part(0, other.start());
        }
        Matcher next = OTHER_SOLVENT.matcher(text);
        int end = next.find(water.end()) ? next.start() : text.length();
        return value.part(water.start(), end);
    }
}
