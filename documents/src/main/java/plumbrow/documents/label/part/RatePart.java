package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Of;
import plumbrow.documents.label.Soil;
import plumbrow.documents.label.grammar.RateText;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;

/** Use rates that stand in sentences. */
final class RatePart implements Part {
    private static final Pattern APPLY = Near.words(
            "\\bappl(?:y|ied|ication)|\\buse\\b|\\brate|\\bbroadcast\\b|\\bspray\\b|\\bband\\b|\\bin-?furrow\\b|^\\W*(?:pre|post|foliar)");
    private static final Pattern TIMING = Pattern.compile(
            "(?i)\\b(?:early pre-?plant|pre-?plant(?: incorporated| surface)?|pre-?emergence|at[- ]plant(?:ing)?|early post-?emergence|late post-?emergence|post-?emergence|burndown|layby|in the fall|fall application"
                    + "|after (?:\\w+ ){0,2}emergence|before (?:\\w+ ){0,2}emerge(?:s|nce)?|(?:from )?V[E\\d]{1,2}(?: (?:to|through) [VR][T\\d]{1,2})?(?: stage)?|R\\d (?:to|through) R\\d|until (?:corn|soybeans?|wheat|the crop) (?:is|are|reach\\w*) [^,.;]{3,30}"
                    + "|up to \\d{1,2} inch(?:es)?(?: tall)?|tiller(?:ing)? to joint(?:ing)?|at threshold|when [^,.;]{3,50} (?:threshold|appear))\\b");
    private static final Pattern METHOD = Pattern.compile(
            "(?i)\\b(?:T-band|in-?furrow|broadcast|banded|band|post-?directed|directed spray|chemigation|aerial(?:ly)?|foliar(?: spray)?|seed treatment|spot (?:spray|treatment)|side-?dress|soil[- ]incorporated)\\b");
    private static final Pattern AGAIN = Near.words("\\(\\s?(?:equivalent|equal) to\\b");
    private static final Pattern NO_RATE =
            Near.words("\\bif (?:the )?(?:stand|crop)|\\bequivalent\\b|\\bcontains\\b|per 100 gal|\\bTotal\\b");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            boolean about = sentence.topic() == Topic.CROP
                    || sentence.topic() == Topic.DIRECTIONS
                    || sentence.topic() == Topic.APPLICATION
                    || sentence.topic() == Topic.OTHER_USE
                    || sentence.topic() == Topic.AGRICULTURAL_USE;
            if (about
                    && Near.has(sentence, APPLY)
                    && !Near.has(sentence, MostPart.LIMIT)
                    && !Near.has(sentence, Near.DO_NOT)) {
                sentence(sentence, readings);
            }
        }
    }

    private static void sentence(Sentence sentence, Readings readings) {
        List<RateText> all = RateText.all(sentence.text()).stream()
                .map(rate -> rate.ofProduct(readings.productName()))
                .toList();
        boolean areas = all.size() > 1
                && all.stream().map(rate -> area(rate)).distinct().count() == all.size();
        boolean odd = Near.has(sentence, NO_RATE) && !(areas && Near.has(sentence, AGAIN));
        boolean carrier = all.stream().anyMatch(Stuff::isCarrier) || Stuff.goesOutIn(sentence.text());
        List<RateText> own = all.stream()
                .filter(rate -> !(carrier && rate.amount().unit().equals("gal/ac")))
                .filter(rate -> !Stuff.isOther(rate) && rate.of() == Of.PRODUCT && !odd)
                .toList();
        for (RateText rate : own) {
            if (!rate.doubt().isEmpty()) {
                readings.unclear(LabelKind.USE_RATE, rate.doubt(), sentence.quote());
                continue;
            }
            if (own.size() > 1 && !areas) {
                readings.unclear(LabelKind.USE_RATE, "more than one rate stands in the sentence", sentence.quote());
                return;
            }
            readings.state(
                    LabelKind.USE_RATE,
                    new LabelContent.Use(
                            Sites.of(sentence, rate),
                            soil(sentence.text()),
                            rate.amount(),
                            all(TIMING, sentence),
                            all(METHOD, sentence)),
                    sentence.quote());
        }
    }

    private static String area(RateText rate) {
        String unit = rate.amount().unit();
        return unit.substring(unit.indexOf('/') + 1);
    }

    private static Soil soil(String text) {
        return new Soil(SoilWords.texture(text), SoilWords.organicMatter(text).orElse(null));
    }

    private static String all(Pattern words, Sentence sentence) {
        List<String> found = new ArrayList<>();
        Matcher matcher = words.matcher(sentence.text());
        while (matcher.find()) {
            found.add(matcher.group());
        }
        return String.join("; ", found.stream().distinct().toList());
    }

    static Optional<String> timing(String text) {
        Matcher found = TIMING.matcher(text);
        return found.find() ? Optional.of(found.group()) : Optional.empty();
    }
}
