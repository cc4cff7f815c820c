package plumbrow.documents.label.grammar;

import java.util.regex.Pattern;
import plumbrow.documents.label.Way;

/** Whether a statement speaks of ground or of aerial application. */
public final class WayWords {
    private static final Pattern AIR =
            Pattern.compile("(?i)\\baerial(?:ly)?\\b|\\bby air\\b|\\baircraft\\b|\\bair\\s*:|\\bairplane\\b");
    private static final Pattern GROUND =
            Pattern.compile("(?i)\\bground(?!\\s?-?\\s?water|\\s+(?:is|or snow)|ed)\\b|\\bboom\\b(?! length| width)");

    private WayWords() {}

    /** The way a stretch of text names; any where it names none or both. */
    public static Way in(String text) {
        boolean air = AIR.matcher(text).find();
        boolean ground = GROUND.matcher(text).find();
        return air == ground ? Way.ANY : air ? Way.AIR : Way.GROUND;
    }
}
