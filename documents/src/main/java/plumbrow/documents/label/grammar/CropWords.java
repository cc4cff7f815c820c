package plumbrow.documents.label.grammar;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.advice.field.Crop;

/** Crops as labels name them. */
public final class CropWords {
    private static final String ONE =
            "(?:(?:field|sweet|seed|silage|grain|forage|winter|spring|durum|dry|edible|white|red|sugar|small|hard|soft|glyphosate-tolerant|herbicide-tolerant|tolerant)\\s+){0,3}"
                    + "(?:corn|popcorn|maize|soybeans?|wheat|triticale|sorghum|milo|cotton|barley|oats?|rye|alfalfa|clovers?|sugar ?beets?|sunflowers?|potato(?:es)?"
                    + "|beans?|peas?|peanuts?|rice|grains|canola|flax|lentils?|tobacco|tomato(?:es)?|cucurbits?|vegetables|onions?|cabbage|sugarcane|pastures?|rangeland|fallow)";
    private static final String BRACKETS = "(?:\\s?\\([^)]{1,60}\\))?";
    private static final String LIST =
            ONE + BRACKETS + "(?:\\s?(?:,\\s?(?:and|or)?|/|&|and|or)\\s?" + ONE + BRACKETS + "){0,9}";
    private static final Pattern CROPS = Pattern.compile("(?i)(?<![\\p{L}-])" + LIST + "(?![\\p{L}])");
    private static final Pattern HEADING = Pattern.compile(
            "(?i)(?:\\d{1,2}(?:\\.\\d)?\\.?\\s+)?(?:(?:directions\\s+)?(?:for\\s+)?use\\s+(?:in|on)|specific use directions[ -–:]+|crops?\\s?:|application (?:in|to)|rates? (?:for|in))?\\s*(?<crop>"
                    + LIST + ")(?:\\s?[-–—:]\\s?(?<rest>[^.]{0,60}))?\\s?:?");
    private static final Pattern RUN_IN = Pattern.compile("(?i)^\\W{0,2}(?<crop>" + LIST + ")\\s?(?::|\\s[–—-])\\s");

    private CropWords() {}

    /** A crop or crops named somewhere in a text, as printed. */
    public static Optional<String> in(String text) {
        Matcher found = CROPS.matcher(text);
        return found.find() ? Optional.of(found.group()) : Optional.empty();
    }

    /** The crops that a line names and nothing else, as the heading of what is said of them. */
    public static Optional<String> heading(String line) {
        Matcher found = HEADING.matcher(line.strip());
        return found.matches() ? Optional.of(found.group("crop").strip()) : Optional.empty();
    }

    /** The crops at the head of a paragraph: "Corn: apply …". */
    public static Optional<String> runIn(String paragraph) {
        Matcher found = RUN_IN.matcher(paragraph);
        return found.find() ? Optional.of(found.group("crop").strip()) : Optional.empty();
    }

    /** The crops of the shelf that a label's words mean. Sweet corn and popcorn are not the corn of the shelf. */
    public static Set<Crop> shelf(String printed) {
        Set<Crop> crops = EnumSet.noneOf(Crop.class);
        String text = printed.toLowerCase(Locale.ROOT).replaceAll("\\((?![^)]*field)[^)]*\\)", " ");
        for (String part : text.split(",|/|&|\\band\\b|\\bor\\b|[()]", -1)) {
            String one = part.strip();
            if (one.matches("(?:.*\\b(?:field|silage|grain|tolerant) )?corn|field")) {
                crops.add(Crop.CORN);
            } else if (one.matches("(?:.*\\b)?soybeans?")) {
                crops.add(Crop.SOYBEAN);
            } else if (one.matches("(?:(?:hard|soft|red|white|winter|spring) )*wheat")) {
                crops.add(Crop.WHEAT);
            }
        }
        return crops;
    }
}
