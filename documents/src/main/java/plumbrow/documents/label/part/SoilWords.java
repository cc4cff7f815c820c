package plumbrow.documents.label.part;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.grammar.Measure;
import plumbrow.documents.label.grammar.MeasureText;
import plumbrow.documents.sheet.Amount;

/** Soils as labels describe them. */
final class SoilWords {
    private static final String CLASS =
            "(?:sandy clay loam|silty clay loam|clay loam|sandy loam|silt loam|loamy sand|sandy clay|silty clay|sand|silt|loam|clay)";
    private static final Pattern TEXTURE =
            Pattern.compile("(?i)\\b(?:(?:coarse|medium|fine)(?:[- ]textured)?\\s+soils?(?:\\s?\\([^)]{3,90}\\))?|"
                    + CLASS + "(?:(?:,| and| or|, and|, or) " + CLASS + "){0,6}\\s+soils?)");
    private static final Pattern MATTER = Pattern.compile("(?i)organic matter|\\bO\\.?M\\.?\\b");
    private static final Pattern OR_MORE = Pattern.compile(
            "(?i)^\\s*(?:or (?:more|greater|higher|above)|and (?:above|over))|^\\s*(?:organic matter|O\\.?M\\.?)\\s*(?:or (?:more|greater|higher))");
    private static final Pattern OR_LESS =
            Pattern.compile("(?i)^\\s*(?:or less|or lower|and below)|^\\s*(?:organic matter)\\s*or less");

    private SoilWords() {}

    /** Soil textures named in a sentence, as printed; empty for none. */
    static String texture(String text) {
        Matcher found = TEXTURE.matcher(text);
        return found.find() ? found.group() : "";
    }

    /** The organic matter a text speaks of [%]. */
    static Optional<Amount> organicMatter(String text) {
        return MATTER.matcher(text).find() ? share(text) : Optional.empty();
    }

    /** A share with its sign: 3% or more, less than 3%, 1 to 3%. */
    static Optional<Amount> share(String text) {
        String percent =
                text.replaceAll("(\\d)\\s?(?=(?:or|and) (?:more|less|greater|above|higher|lower|below))", "$1% ");
        return MeasureText.first(
                        percent.contains("%") || percent.contains("percent") ? percent : percent + "%", Measure.SHARE)
                .map(found -> {
                    String after = percent.substring(Math.min(percent.length(), found.to()));
                    if (OR_MORE.matcher(after).find()) {
                        return MeasureText.as(Amount.Qualifier.AT_LEAST, found.amount());
                    }
                    return OR_LESS.matcher(after).find()
                            ? MeasureText.as(Amount.Qualifier.AT_MOST, found.amount())
                            : found.amount();
                });
    }
}
