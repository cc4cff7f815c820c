package plumbrow.documents.label.part;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.grammar.CropWords;
import plumbrow.documents.label.grammar.RateText;
import plumbrow.documents.label.text.Sentence;

/** What a rate is put on: a crop, or what stands behind the area, as in "per acre of turf grass". */
final class Sites {
    private static final Pattern OF = Pattern.compile(
            "^\\s+of\\s+(?!(?:this|the|product|spray|water|treated)\\b)(?<site>\\p{Ll}[\\p{L}-]+(?:\\s(?!per\\b|and\\b|or\\b|for\\b|with\\b|in\\b|at\\b|combined\\b|to\\b)\\p{Ll}[\\p{L}-]+){0,2})");

    private Sites() {}

    static String of(Sentence sentence, RateText rate) {
        if (CropWords.in(sentence.text()).isEmpty()
                && rate.to() <= sentence.text().length()) {
            Matcher site = OF.matcher(sentence.text().substring(rate.to()));
            if (site.find()) {
                return site.group("site");
            }
        }
        return Near.crop(sentence);
    }
}
