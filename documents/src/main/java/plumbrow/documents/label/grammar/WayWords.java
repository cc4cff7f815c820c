package plumbrow.documents.label.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import plumbrow.documents.label.Way;

/** Whether a statement speaks of ground or of aerial application. */
public final class WayWords {
    private static final Pattern AIR = Pattern.compile(
            "(?i)\\baerial(?:ly)?\\b|\\bby air\\b|\\baircraft\\b|\\bair\\s*:|\\bairplane\\b|\\bfixed[- ]wing\\b|\\bhelicopters?\\b|\\brotary[- ](?:wing|aircraft)\\b");
    private static final Pattern GROUND = Pattern.compile(
            "(?i)(?<!above )(?<!above the )(?<!from the )\\bground(?!\\s+level)(?!\\s?-?\\s?water|\\s+(?:is|or snow)|ed)\\b|\\bboom\\b(?! length| width)");

    private WayWords() {}

    /**
     * The way of each amount of a sentence: that of the sentence where it names one only, else what stands behind each amount,
     * or before each where not every one has a way behind it.
     */
    public static List<Way> each(String text, List<MeasureText> amounts) {
        Way whole = in(text);
        if (whole != Way.ANY || !AIR.matcher(text).find()) {
            return amounts.stream().map(amount -> whole).toList();
        }
        List<Way> before = new ArrayList<>();
        List<Way> behind = new ArrayList<>();
        for (int i = 0; i < amounts.size(); i++) {
            int from = i == 0 ? 0 : amounts.get(i - 1).to();
            int to = i + 1 < amounts.size() ? amounts.get(i + 1).from() : text.length();
            before.add(in(text.substring(from, amounts.get(i).from())));
            behind.add(in(text.substring(amounts.get(i).to(), to)));
        }
        return behind.contains(Way.ANY) ? before : behind;
    }

    /** The way a stretch of text names; any where it names none or both. */
    public static Way in(String text) {
        boolean air = AIR.matcher(text).find();
        boolean ground = GROUND.matcher(text).find();
        return air == ground ? Way.ANY : air ? Way.AIR : Way.GROUND;
    }
}
