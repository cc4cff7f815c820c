package plumbrow.documents.label.grammar;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.advice.field.CropName;

/**
 * The crops of a row that names several: "soybeans, dry beans, alfalfa", "small grains (wheat, barley, oats)".
 *
 * A group with its members in brackets is these members; where the brackets only give examples ("such as", "e.g.", "…") it is
 * all that are known of the group. What the group doesn't name stays with the label's row for any other crop. The members of a
 * group are the trade's, from memory.
 */
public final class CropList {
    private static final List<String> SMALL_GRAINS = List.of("wheat", "barley", "oats", "rye", "triticale");
    private static final Map<String, List<String>> GROUPS = Map.of(
            "small grain", SMALL_GRAINS,
            "small grain cereal", SMALL_GRAINS,
            "cereal", SMALL_GRAINS,
            "cereal grain", SMALL_GRAINS,
            "small seeded legume", List.of("alfalfa", "clover", "vetch"));

    private static final Pattern BRACKETS = Pattern.compile("^(?<group>[^()]*?)\\s*\\((?<members>[^()]*)\\)?\\s*$");
    private static final Pattern EXAMPLES = Pattern.compile(
            "(?i)\\b(?:such as|including|includes?|e\\.?\\s?g\\.?|for example)\\b[,:]?|…|\\.\\.\\.|\\betc\\.?");
    private static final Pattern SEPARATOR =
            Pattern.compile("\\s*(?:[,;/&]|\\band\\b|\\bor\\b)\\s*(?:(?:and|or)\\b\\s*)?");
    private static final Pattern OTHER = Pattern.compile("(?i)\\b(?:other|not listed|all crops|any crops?)\\b");

    private CropList() {}

    /** The crops, each by itself, in small letters and in order; the words as they stand where they are one. */
    public static List<String> of(String printed) {
        String text = printed.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
        if (OTHER.matcher(text).find()) {
            return List.of(text);
        }
        Set<String> crops = new LinkedHashSet<>();
        for (String part : parts(text)) {
            Matcher brackets = BRACKETS.matcher(part);
            if (brackets.matches()) {
                crops.addAll(members(brackets.group("group"), brackets.group("members")));
            } else {
                crops.addAll(group(part));
            }
        }
        crops.removeIf(String::isBlank);
        return crops.isEmpty() ? List.of(text) : List.copyOf(crops);
    }

    /** Parted by commas and the like, but not within brackets. */
    private static List<String> parts(String text) {
        List<String> parts = new ArrayList<>();
        StringBuilder open = new StringBuilder();
        Matcher separator = SEPARATOR.matcher(text);
        int from = 0;
        while (separator.find()) {
            String before = text.substring(0, separator.start());
            boolean within = before.lastIndexOf('(') > before.lastIndexOf(')');
            if (!within && !separator.group().isBlank()) {
                parts.add(open.append(text, from, separator.start()).toString().strip());
                open.setLength(0);
                from = separator.end();
            }
        }
        parts.add(text.substring(from).strip());
        return parts;
    }

    private static List<String> members(String group, String members) {
        boolean examples = EXAMPLES.matcher(members).find();
        List<String> named = new ArrayList<>();
        boolean crops = true;
        for (String each : SEPARATOR.split(EXAMPLES.matcher(members).replaceAll(" "), -1)) {
            String crop = each.replaceAll("[.:]+$", "").strip();
            if (!crop.isEmpty()) {
                named.add(crop);
                crops &= CropName.known(crop, List.of());
            }
        }
        List<String> known = group(group);
        boolean ofAGroup = GROUPS.containsKey(singular(group));
        if (!crops || named.isEmpty() || !(ofAGroup || named.size() > 1)) {
            return List.of(named.isEmpty() ? group : group + " (" + members.strip() + ")");
        }
        if (!examples || !ofAGroup) {
            return named;
        }
        Set<String> all = new LinkedHashSet<>(named);
        known.stream()
                .filter(crop -> named.stream().noneMatch(each -> CropName.same(each, crop)))
                .forEach(all::add);
        return List.copyOf(all);
    }

    private static List<String> group(String name) {
        return GROUPS.getOrDefault(singular(name), List.of(name.strip()));
    }

    private static String singular(String name) {
        return name.strip().replace('-', ' ').replaceAll("s$", "");
    }
}
