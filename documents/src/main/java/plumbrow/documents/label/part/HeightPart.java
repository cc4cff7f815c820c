package plumbrow.documents.label.part;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Way;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** The tallest crop and the tallest weeds, the warmest air, and ways of application that are forbidden. */
final class HeightPart implements Part {
    private static final Pattern TALL = Pattern.compile(
            "(?i)\\b(?<who>corn|soybeans?|wheat|crop|weeds?|grass(?:es)?|broadleaf weeds)\\b(?<between>[^.;]{0,60}?)(?<!at least )(?:(?<n1>\\d{1,2})\\s?(?:-|–|to)\\s?)?(?<n2>\\d{1,2})\\s?(?:inch(?:es)?|in\\.|\")(?=[\\s.,;)-]|$)(?<behind>[^.;]{0,20})");
    private static final Pattern OF_HEIGHT = Pattern.compile("(?i)\\btall|\\bheight|\\bhigh\\b|exceed|\\breach");
    private static final Pattern OTHER = Near.words(
            "\\bboom\\b|\\brelease\\b|\\bnozzle|\\bdeep\\b|\\bdepth\\b|\\bincorporat|\\brows?\\b|\\bband\\b|\\bcanopy\\b|\\bat least\\b|\\bminimum\\b|\\bfurrow\\b");
    private static final Pattern WARM = Pattern.compile(
            "(?i)\\btemperatures?\\b[^.;]{0,40}?\\b(?:exceeds?|exceeding|above|over|greater than|higher than|more than)\\s(?<n>\\d{2,3})\\s?(?:°|º|degrees?|deg\\.?)?\\s?(?<unit>F|C)(?:ahrenheit|elsius)?\\b");
    private static final Pattern WAY = Near.words(
            "\\baerial(?:ly)?\\b|\\bby air\\b|\\baircraft\\b|\\birrigation system|\\bchemigat|\\bground equipment only\\b|\\bonly (?:by|with) ground\\b");
    private static final Pattern APPLY = Near.words("\\bappl(?:y|ied|ication)\\b|\\bspray\\b");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            if (sentence.topic() == Topic.STORAGE) {
                continue;
            }
            height(sentence, readings);
            warm(sentence, readings);
            way(sentence, readings);
        }
    }

    private static void height(Sentence sentence, Readings readings) {
        if (Near.has(sentence, OTHER) || !Near.has(sentence, APPLY)) {
            return;
        }
        Matcher tall = TALL.matcher(sentence.text());
        while (tall.find()) {
            if (!OF_HEIGHT
                    .matcher(tall.group("between") + " " + tall.group("behind"))
                    .find()) {
                continue;
            }
            double inches = Double.parseDouble(tall.group("n2"));
            boolean weeds = tall.group("who").toLowerCase(java.util.Locale.ROOT).matches("weeds?|grass.*|broadleaf.*");
            readings.state(
                    weeds ? LabelKind.WEED_HEIGHT : LabelKind.CROP_HEIGHT,
                    new LabelContent.Height(Near.cropMeant(sentence), at(inches, "in")),
                    sentence.quote());
        }
    }

    private static void warm(Sentence sentence, Readings readings) {
        Matcher warm = WARM.matcher(sentence.text());
        if (warm.find() && Near.has(sentence, Near.DO_NOT) && Near.has(sentence, APPLY)) {
            String unit = warm.group("unit").toUpperCase(java.util.Locale.ROOT).equals("F") ? "°F" : "°C";
            readings.state(
                    LabelKind.AIR_TEMPERATURE,
                    new LabelContent.Measured(at(Double.parseDouble(warm.group("n")), unit), Way.ANY),
                    sentence.quote());
        }
    }

    private static void way(Sentence sentence, Readings readings) {
        boolean only = sentence.text().toLowerCase(java.util.Locale.ROOT).contains("only");
        if (Near.has(sentence, WAY)
                && Near.has(sentence, APPLY)
                && (Near.has(sentence, Near.DO_NOT) || only)
                && !sentence.text().matches(".*\\d.*")) {
            readings.text(LabelKind.METHOD, sentence.text().replaceAll("[.\\s]+$", ""), sentence.quote());
        }
    }

    private static Amount at(double most, String unit) {
        return new Amount(Qualifier.AT_MOST, most, most, unit, Amount.Conditions.NONE);
    }
}
