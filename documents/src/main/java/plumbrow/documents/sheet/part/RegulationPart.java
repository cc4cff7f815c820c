package plumbrow.documents.sheet.part;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.AmountText;
import plumbrow.documents.sheet.grammar.Family;
import plumbrow.documents.sheet.section.Item;
import plumbrow.documents.sheet.section.Items;
import plumbrow.documents.sheet.section.Label;

/** Reportable quantities wherever they stand, and the lists that a product or its ingredients are on. */
final class RegulationPart implements Part {
    private static final Pattern RQ = Pattern.compile("(?i)\\breportable quantit(?:y|ies)\\b|\\bRQ\\b");
    private static final Pattern OF = Pattern.compile(
            "^\\s*(?:\\(\\s*(?:for |of )?([^)]{3,60})\\)|(?:for|of)\\s+([\\p{L}\\d][\\p{L}\\d,' -]{2,50}))");
    private static final Pattern BESIDE =
            Pattern.compile("(?:^|[\\n;:.]\\s*)([\\p{L}\\d][\\p{L}\\d,' -]{2,50}?)\\s*[:(\\t–-]*\\s*$");
    private static final Map<String, Pattern> LISTS = new LinkedHashMap<>();

    static {
        list(
                "SARA 302",
                "(?:SARA |EPCRA )?(?:title iii,? )?(?:section |sec\\. )?302(?: extremely hazardous substances?(?: \\(EHS\\))?|/304)?");
        list(
                "SARA 311/312",
                "(?:SARA |EPCRA )?(?:title iii,? )?(?:section |sec\\. |sections )?311 ?(?:/|and|,) ?312(?: hazard (?:categor(?:y|ies)|class(?:es)?)| hazards?)?");
        list(
                "SARA 313",
                "(?:SARA |EPCRA )?(?:title iii,? )?(?:section |sec\\. )?313(?: toxic (?:chemicals?|release)(?: inventory)?| components| toxic chemical\\(s\\))?");
        list(
                "TSCA",
                "(?:U\\.?S\\.? )?(?:TSCA|toxic substances control act)(?: \\(TSCA\\))?(?: inventory| status| 8\\(b\\))*");
        list("FIFRA", "FIFRA(?: (?:information|status))?|federal insecticide, fungicide,? and rodenticide act");
        list("California Proposition 65", "(?:california )?prop(?:osition|\\.)? ?65|california");
        list("RCRA", "RCRA(?: (?:status|waste|hazardous waste))?");
        list("Clean Water Act", "(?:clean water act|CWA)(?: (?:section )?\\d{3}.{0,20})?");
        list("Clean Air Act", "(?:clean air act|CAA)(?: (?:section )?\\d{3}.{0,20})?");
        list(
                "State right-to-know",
                "(?:state )?right[- ]to[- ]know(?: (?:distributions?|lists?|states?))?|(?:massachusetts|new jersey|pennsylvania)(?: right[- ]to[- ]know)?");
    }

    private static void list(String name, String words) {
        LISTS.put(
                name,
                Pattern.compile(
                        "^(?:[•·▪*-]\\s*)?(?:US |U\\.S\\. )?(?:" + words
                                + ")(?:\\s?\\([^)]{0,40}\\))?\\s*[:\\t–-]+\\s*(?=\\S)",
                        Pattern.CASE_INSENSITIVE));
    }

    @Override
    public void read(SheetText sheet, Readings readings) {
        Substances substances = new Substances(readings);
        for (SheetSection section : List.of(SheetSection.REGULATION, SheetSection.RELEASE, SheetSection.TRANSPORT)) {
            for (Item item : sheet.items(section)) {
                quantities(item, sheet, substances, readings);
            }
        }
        for (Item item : Items.of(sheet.rows(SheetSection.REGULATION))) {
            lists(item.all(), readings);
        }
        for (Row row : sheet.rows(SheetSection.REGULATION)) {
            lists(Passage.of(row), readings);
        }
    }

    private static void quantities(Item item, SheetText sheet, Substances substances, Readings readings) {
        Passage all = item.all();
        String text = all.text();
        Matcher words = RQ.matcher(text);
        if (!words.find() || (item.is(Label.CLEAN_UP) && !text.contains("RQ"))) {
            return;
        }
        for (AmountText found : AmountText.all(text, Family.WEIGHT, sheet.style())) {
            if (found.from() < words.start() || near(text, found)) {
                continue;
            }
            if (!found.doubt().isEmpty()) {
                readings.unclear(ValueKind.REPORTABLE_QUANTITY, found.doubt(), all.quote(found.from(), found.to()));
                continue;
            }
            String substance = substance(text, found, words.end(), substances);
            readings.state(
                    ValueKind.REPORTABLE_QUANTITY,
                    new Content.Reportable(substance, found.amount()),
                    all.quote(words.start(), found.to()));
        }
    }

    /** The same weight again in kilograms, in brackets. */
    private static boolean near(String text, AmountText found) {
        return text.substring(Math.max(0, found.from() - 3), found.from()).matches(".*[(/]\\s*");
    }

    private static String substance(String text, AmountText found, int after, Substances substances) {
        String known = substances.in(
                text.substring(Math.min(after, found.from()), text.length()).replace('\t', ' '), "");
        if (!known.isEmpty()) {
            return known;
        }
        Matcher of = OF.matcher(text.substring(found.to()));
        if (of.find()) {
            String named = of.group(1) == null ? of.group(2) : of.group(1);
            return named.matches("(?i)[\\d.,\\s]+(?:kg|lbs?|pounds).*") ? "" : Prose.of(named);
        }
        Matcher beside = BESIDE.matcher(text.substring(Math.min(after, found.from()), found.from()));
        return beside.find() ? Prose.of(beside.group(1)) : "";
    }

    private static void lists(Passage passage, Readings readings) {
        String text = passage.text();
        LISTS.forEach((name, words) -> {
            Matcher found = words.matcher(text);
            boolean kept = readings.stated(ValueKind.REGULATORY_LIST).stream()
                    .anyMatch(stated ->
                            ((Content.Listing) stated.content()).list().equals(name));
            if (!kept && found.find()) {
                Passage says = passage.from(found.end());
                if (!says.isEmpty()) {
                    readings.state(ValueKind.REGULATORY_LIST, new Content.Listing(name, Prose.of(says)), says.quote());
                }
            }
        });
    }
}
