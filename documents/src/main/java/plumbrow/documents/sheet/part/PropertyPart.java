package plumbrow.documents.sheet.part;

import java.util.List;
import java.util.Locale;
import java.util.Set;
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
            new Property(ValueKind.LOWER_EXPLOSIVE_LIMIT, Label.LOWER_LIMIT, List.of(Family.PERCENT, Family.BARE)),
            new Property(ValueKind.UPPER_EXPLOSIVE_LIMIT, Label.UPPER_LIMIT, List.of(Family.PERCENT, Family.BARE)),
            new Property(ValueKind.EVAPORATION_RATE, Label.EVAPORATION, List.of(Family.BARE)),
            new Property(ValueKind.DENSITY, Label.DENSITY, List.of(Family.DENSITY, Family.BARE)),
            new Property(ValueKind.PH, Label.PH, List.of(Family.BARE)),
            new Property(ValueKind.SOLUBILITY, Label.SOLUBILITY, List.of(Family.WATER)),
            new Property(ValueKind.PARTITION, Label.PARTITION, List.of(Family.BARE)));

    private static final Set<ValueKind> OF_FIRE =
            Set.of(ValueKind.FLASH_POINT, ValueKind.LOWER_EXPLOSIVE_LIMIT, ValueKind.UPPER_EXPLOSIVE_LIMIT);
    private static final List<Family> VOLATILE = List.of(Family.PERCENT, Family.DENSITY);
    private static final Pattern WHICH_LIMIT = Pattern.compile("(?i)\\b(lower|upper|LEL|UEL|LFL|UFL)\\b\\s*[:=]?\\s*");
    /** "F: 86 C: 30": the unit stands before its figure, and the next one's is not this one's. */
    private static final Pattern DEGREES_AHEAD =
            Pattern.compile("\\W*(?<unit>[FC])\\s*[:=]\\s*(?<number>[<>≤≥]?\\s*-?\\d+(?:[.,]\\d+)?)");

    private static final Pattern UNIT_AHEAD = Pattern.compile(
            "(?i)(?<unit>(?:wt\\.?\\s?)?%|g\\s?/\\s?l|lbs?\\.?\\s?/\\s?gal)\\s*[:=]\\s*(?<number>[<>≤≥]?\\s*\\d[\\d.,]*)");
    private static final Pattern RATE_WORDS = Pattern.compile(
            "(?is)\\W*((?:(?:much|very)\\s+)?(?:fast|slow|high|low|medium|moderate|rapid)(?:er)?\\b[^.\\t\\n]{0,40}).*");
    /** A unit in a label's brackets: "(mm Hg)", "(°F)". */
    private static final Pattern UNIT_IN_HEAD =
            Pattern.compile("[(\\[,]\\s*([^)\\]:]{1,12}?)\\s*[)\\]:]|\\s([CF])\\W*$");
    /** A flash point that none was seen up to. */
    private static final Pattern NONE_UP_TO = Pattern.compile(
            "(?is).*\\b(?:none|no flash|not? (?:flash(?:es)?|detected|observed|found))\\b[^.]{0,30}?\\b(?:at or|up to(?: and including)?|to|below|at|before)\\b[^\\d]*$");

    private static final Pattern LEAST_BEHIND = Pattern.compile("(?i)^\\s*\\d?\\s*(?:min\\b|minimum)");
    private static final Pattern MOST_BEHIND = Pattern.compile("(?i)^\\s*\\d?\\s*(?:max\\b|maximum)");
    private static final Pattern SOLUBLE = Pattern.compile(
            "(?i)\\W*(?:(?:in )?water\\s*[:,]?\\s*)?((?:completely |fully |partially |partly |slightly |very |readily |practically |easily |not |forms? (?:an? )?)*"
                    + "(?:soluble|miscible|insoluble|nil\\b|dispersible|emulsifi(?:es|able)|disperses|emulsion|suspension|dissolves|negligible)\\b[^.;\\t\\n]*).*");
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
            SheetSection[] where = OF_FIRE.contains(property.kind)
                    ? new SheetSection[] {SheetSection.PROPERTIES, SheetSection.FIRE}
                    : new SheetSection[] {SheetSection.PROPERTIES};
            for (Item item : sheet.items(property.label, where)) {
                if (!item.value().isEmpty()) {
                    item(property, item, sheet, readings);
                }
            }
        }
        for (SheetSection section : List.of(SheetSection.FIRE, SheetSection.PROPERTIES)) {
            for (Item item : sheet.items(section)) {
                if (item.is(Label.FIRE_HAZARDS)) {
                    bothLimits(item, sheet, readings);
                } else if (item.is(Label.VOC)) {
                    volatiles(item, sheet, readings);
                }
            }
        }
    }

    /** "Lower: 1 % Upper: 7 %" below one label. */
    private static void bothLimits(Item item, SheetText sheet, Readings readings) {
        Matcher end = WHICH_LIMIT.matcher(item.value().text());
        while (end.find()) {
            Passage value = item.value().from(end.end());
            AmountText amount = AmountText.first(value.text(), Family.PERCENT, sheet.style());
            if (amount != null && amount.from() < 3 && amount.doubt().isEmpty()) {
                readings.state(
                        end.group(1).toLowerCase(Locale.ROOT).startsWith("l")
                                ? ValueKind.LOWER_EXPLOSIVE_LIMIT
                                : ValueKind.UPPER_EXPLOSIVE_LIMIT,
                        new Content.Measured(amount.amount()),
                        value.quote(amount.from(), amount.to()));
            }
        }
    }

    /** Volatile matter in each unit that it is given in. */
    private static void volatiles(Item item, SheetText sheet, Readings readings) {
        Passage value = item.value();
        int column = value.text().indexOf('\t');
        if (column >= 0 && value.text().substring(column).matches("(?s)\\t\\s*%.*")) {
            value = value.part(0, column);
        }
        String text = value.text();
        Property property = new Property(ValueKind.VOC, Label.VOC, VOLATILE);
        AmountText ofHead = withUnitOfHead(property, text, item.head().text(), sheet);
        if (ofHead != null && ofHead.doubt().isEmpty() && ofHead.amount().low() >= 0 && !text.startsWith("-")) {
            readings.state(
                    ValueKind.VOC, new Content.Measured(ofHead.amount()), value.quote(ofHead.from(), ofHead.to()));
            return;
        }
        Matcher ahead = UNIT_AHEAD.matcher(text);
        boolean any = false;
        while (ahead.find()) {
            any = true;
            String unit = ahead.group("unit").replaceAll("(?i)^wt\\.?\\s?", "");
            AmountText amount = amountOf(ahead.group("number") + " " + unit, VOLATILE, sheet);
            if (amount != null && amount.doubt().isEmpty()) {
                readings.state(
                        ValueKind.VOC, new Content.Measured(amount.amount()), value.quote(ahead.start(), ahead.end()));
            }
        }
        if (any) {
            return;
        }
        for (Family family : VOLATILE) {
            for (AmountText amount : AmountText.all(text, family, sheet.style())) {
                if (amount.doubt().isEmpty()) {
                    readings.state(
                            ValueKind.VOC,
                            new Content.Measured(amount.amount()),
                            value.quote(amount.from(), amount.to()));
                }
            }
        }
    }

    private static @Nullable AmountText amountOf(String text, List<Family> families, SheetText sheet) {
        for (Family family : families) {
            AmountText amount = AmountText.first(text, family, sheet.style());
            if (amount != null) {
                return amount;
            }
        }
        return null;
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
        AmountText amount = amount(property, text, item.head().text(), sheet);
        if (property.kind == ValueKind.EVAPORATION_RATE && (amount == null || amount.from() > 3)) {
            Matcher words = RATE_WORDS.matcher(text);
            if (words.matches()) {
                readings.state(
                        property.kind,
                        new Content.Text(Prose.of(words.group(1))),
                        value.quote(words.start(1), words.end(1)));
            }
            return;
        }
        if (amount == null) {
            words(property.kind, value, readings);
        } else if (!amount.doubt().isEmpty()) {
            readings.unclear(property.kind, amount.doubt(), value.quote(amount.from(), amount.to()));
        } else {
            state(property, item, value, amount, sheet, readings);
        }
    }

    private static @Nullable AmountText amount(Property property, String text, String head, SheetText sheet) {
        String searched = property.kind == ValueKind.PH ? blanked(text) : text;
        AmountText ofHead = property.kind == ValueKind.DENSITY ? withUnitOfHead(property, searched, head, sheet) : null;
        if (ofHead != null && !ofHead.amount().unit().isEmpty()) {
            return ofHead;
        }
        Matcher degrees = DEGREES_AHEAD.matcher(searched);
        if (property.families.contains(Family.TEMPERATURE) && degrees.lookingAt()) {
            AmountText whole = AmountText.first(
                    degrees.group("number") + " °" + degrees.group("unit"), Family.TEMPERATURE, sheet.style());
            return whole == null
                    ? null
                    : new AmountText(whole.amount(), degrees.start("number"), degrees.end("number"), whole.doubt());
        }
        for (Family family : property.families) {
            AmountText amount = AmountText.first(searched, family, sheet.style());
            if (amount != null) {
                return amount;
            }
        }
        return property.families.contains(Family.BARE) ? null : withUnitOfHead(property, searched, head, sheet);
    }

    /** A bare number whose unit stands in the label: "Vapor pressure (mm Hg): 2.9E-7 @ 20". */
    private static @Nullable AmountText withUnitOfHead(Property property, String text, String head, SheetText sheet) {
        Matcher unit = UNIT_IN_HEAD.matcher(head);
        AmountText bare = AmountText.first(text, Family.BARE, sheet.style());
        if (bare == null || bare.from() > 3) {
            return null;
        }
        while (unit.find()) {
            String printed = unit.group(1) == null ? unit.group(2) : unit.group(1);
            for (Family family : property.families) {
                AmountText whole = AmountText.first(
                        text.substring(bare.from(), bare.to()).strip() + " " + printed, family, sheet.style());
                if (whole != null && whole.from() == 0) {
                    return new AmountText(whole.amount(), bare.from(), bare.to(), whole.doubt());
                }
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
        String text = value.text();
        Amount amount = meant(property, found, text);
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
                ? new Conditions(
                        null,
                        null,
                        first(Circumstance.method(item.head().text() + " " + text), methodBelow(item, sheet)))
                : new Conditions(celsius(after, before), null, "");
        readings.state(
                property.kind,
                new Content.Measured(amount.under(conditions)),
                value.quote(found.from(), end(text, found)));
    }

    /** What the words around a number make of it. */
    private static Amount meant(Property property, AmountText found, String text) {
        Amount amount = found.amount();
        String ahead = text.substring(0, Math.max(found.from(), firstDigit(text, found.from())));
        String behind = text.substring(found.to());
        if (property.kind == ValueKind.FLASH_POINT && NONE_UP_TO.matcher(ahead).matches()) {
            return signed(amount, Amount.Qualifier.MORE_THAN);
        }
        if (amount.qualifier() == Amount.Qualifier.EXACTLY
                && LEAST_BEHIND.matcher(behind).find()) {
            return signed(amount, Amount.Qualifier.AT_LEAST);
        }
        if (amount.qualifier() == Amount.Qualifier.EXACTLY
                && MOST_BEHIND.matcher(behind).find()) {
            return signed(amount, Amount.Qualifier.AT_MOST);
        }
        boolean limit =
                property.kind == ValueKind.LOWER_EXPLOSIVE_LIMIT || property.kind == ValueKind.UPPER_EXPLOSIVE_LIMIT;
        return limit && amount.unit().isEmpty()
                ? new Amount(amount.qualifier(), amount.low(), amount.high(), "%", amount.conditions())
                : amount;
    }

    private static int firstDigit(String text, int from) {
        int at = from;
        while (at < text.length() && !Character.isDigit(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private static Amount signed(Amount amount, Amount.Qualifier qualifier) {
        return new Amount(qualifier, amount.low(), amount.high(), amount.unit(), amount.conditions());
    }

    /** The quote takes the temperature or the brackets right behind the amount with it. */
    private static int end(String text, AmountText found) {
        Matcher behind = Pattern.compile("^\\s*(?:\\([^)]{0,40}\\)|(?:@|at)\\s*\\d{1,3}(?:[.,]\\d)?\\s?°?\\s?[CF]\\b)")
                .matcher(text.substring(found.to()));
        return behind.find() ? found.to() + behind.end() : found.to();
    }

    /** "Flash Point Method: COC" on the line below the flash point. */
    private static String methodBelow(Item item, SheetText sheet) {
        if (!item.is(Label.FLASH_POINT)) {
            return "";
        }
        for (SheetSection section : List.of(SheetSection.PROPERTIES, SheetSection.FIRE)) {
            List<Item> items = sheet.items(section);
            int at = items.indexOf(item);
            if (at >= 0 && at + 1 < items.size()) {
                Item next = items.get(at + 1);
                boolean method = next.head().text().toLowerCase(Locale.ROOT).contains("method");
                return method ? Circumstance.method(next.value().text()) : "";
            }
        }
        return "";
    }

    private static String first(String one, String other) {
        return one.isEmpty() ? other : one;
    }

    private static @Nullable Double celsius(String after, String before) {
        Double behind = Circumstance.celsius(after);
        return behind == null ? Circumstance.celsius(before) : behind;
    }

    /** Other pressures that are neither the same in another unit nor at another temperature. */
    private static boolean severalSubstances(String text, AmountText first, SheetText sheet) {
        return AmountText.all(text.substring(first.to()), Family.PRESSURE, sheet.style()).stream()
                .anyMatch(other -> !Alike.rounded(first.amount(), other.amount())
                        && Circumstance.celsius(text.substring(first.to())) == null);
    }

    private static boolean logarithm(Item item) {
        return LOG.matcher(item.head().text()).find()
                || LOG.matcher(item.value().text()).find();
    }

    private static void words(ValueKind kind, Passage value, Readings readings) {
        Matcher soluble = SOLUBLE.matcher(value.text().replace('\n', ' '));
        if (kind == ValueKind.SOLUBILITY && soluble.matches()) {
            String words = Prose.of(soluble.group(1)).replaceFirst("(?i)\\s+(?:at|@)\\s+\\d.*$", "");
            readings.state(kind, new Content.Text(words), value.quote(soluble.start(1), soluble.end(1)));
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
