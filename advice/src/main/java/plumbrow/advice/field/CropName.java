package plumbrow.advice.field;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Names of crops as people and labels write them. Case, plural and a few synonyms do not count; "winter wheat" is a kind of
 * wheat, while sweet corn and popcorn are no kinds of the corn that labels mean by field corn.
 *
 * <p>The list of names is from memory: crops of rotations in the United States and the groups by which labels name them.
 */
public final class CropName {
    private static final Map<String, String> SYNONYMS = Map.ofEntries(
            Map.entry("maize", "corn"),
            Map.entry("field corn", "corn"),
            Map.entry("grain corn", "corn"),
            Map.entry("silage corn", "corn"),
            Map.entry("soya", "soybean"),
            Map.entry("soy", "soybean"),
            Map.entry("soya bean", "soybean"),
            Map.entry("milo", "sorghum"),
            Map.entry("grain sorghum", "sorghum"),
            Map.entry("cereal rye", "rye"),
            Map.entry("pop corn", "popcorn"),
            Map.entry("sugar beet", "sugarbeet"),
            Map.entry("dry edible bean", "dry bean"),
            Map.entry("rapeseed", "canola"));

    /** Words that name a kind of a crop and leave it that crop. */
    private static final Set<String> KINDS = Set.of("winter", "spring", "hard", "soft", "red", "white", "durum");

    private static final List<String> KNOWN = Arrays.stream(
                    ("corn, sweet corn, popcorn, seed corn, soybean, wheat, barley, oats, rye, cereal rye, triticale, sorghum, "
                                    + "grain sorghum, forage sorghum, sorghum-sudangrass, sudangrass, millet, proso millet, "
                                    + "pearl millet, alfalfa, clover, red clover, white clover, crimson clover, sweet clover, "
                                    + "vetch, hairy vetch, pea, field pea, winter pea, bean, dry bean, snap bean, lima bean, "
                                    + "faba bean, cowpea, lentil, chickpea, sugarbeet, sunflower, potato, sweet potato, peanut, "
                                    + "cotton, rice, canola, rapeseed, flax, mustard, camelina, radish, turnip, buckwheat, "
                                    + "phacelia, sunn hemp, hemp, safflower, sesame, tobacco, tomato, pepper, cucumber, "
                                    + "cucurbit, pumpkin, squash, melon, watermelon, onion, garlic, cabbage, broccoli, carrot, "
                                    + "lettuce, spinach, asparagus, strawberry, mint, sugarcane, switchgrass, miscanthus, "
                                    + "ryegrass, annual ryegrass, fescue, timothy, orchardgrass, bromegrass, grass, hay, pasture, "
                                    + "rangeland, cover crop, cover crop mix, fallow, idle, prairie, vegetable, "
                                    + "leafy vegetable, root crop, small grain, cereal grain, forage, legume")
                            .split(", "))
            .toList();

    private static final Set<String> KNOWN_PLAIN =
            KNOWN.stream().map(CropName::plain).collect(Collectors.toSet());

    private CropName() {}

    /** Crops that are known without anybody naming them. */
    public static List<String> known() {
        return KNOWN;
    }

    /** Whether two names mean one crop: "Soybeans" and "soybean", "maize" and "field corn". */
    public static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    /** Whether one is a kind of the other, as winter wheat is of wheat. */
    public static boolean kindOf(String kind, String crop) {
        Set<String> narrow = words(kind);
        Set<String> wide = words(crop);
        Set<String> more = new HashSet<>(narrow);
        more.removeAll(wide);
        return narrow.containsAll(wide) && !more.isEmpty() && KINDS.containsAll(more);
    }

    /** Whether a name is one of those known, or means the same as one of these or is a kind of it. */
    public static boolean known(String name, Collection<String> others) {
        return KNOWN_PLAIN.contains(plain(name))
                || KNOWN.stream().anyMatch(crop -> kindOf(name, crop))
                || others.stream().anyMatch(other -> same(name, other) || kindOf(name, other));
    }

    private static Set<String> words(String name) {
        return new HashSet<>(Arrays.asList(plain(name).split(" ")));
    }

    /** In small letters, each word in the singular, by the commoner of two names. */
    private static String plain(String name) {
        String words = Arrays.stream(
                        name.strip().toLowerCase(Locale.ROOT).replace('-', ' ').split("\\s+"))
                .map(CropName::singular)
                .collect(Collectors.joining(" "));
        return SYNONYMS.getOrDefault(words, words);
    }

    private static String singular(String word) {
        if (word.endsWith("oes")) {
            return word.substring(0, word.length() - 2);
        }
        if (word.endsWith("ies") && word.length() > 4) {
            return word.substring(0, word.length() - 3) + "y";
        }
        return word.length() > 3 && word.endsWith("s") && !word.endsWith("ss") && !word.endsWith("us")
                ? word.substring(0, word.length() - 1)
                : word;
    }
}
