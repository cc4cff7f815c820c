package plumbrow.documents.label.part;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.FeatureKind;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Way;
import plumbrow.documents.label.grammar.Measure;
import plumbrow.documents.label.grammar.MeasureText;
import plumbrow.documents.label.grammar.WayWords;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.sheet.Amount.Qualifier;

/** Distances to keep from water, wells, homes, bees and the like. */
final class SetbackPart implements Part {
    private static final int MOST = 8;
    private static final Pattern KEEP = Near.words(
            "\\bwithin\\b|\\bbuffer|\\bset-?back|\\bcloser than\\b|\\bmaintain\\b|\\bat least\\b.*\\b(?:from|between)\\b|\\baway from\\b");
    private static final Pattern FEATURE = Pattern.compile(
            "(?i)\\b(?:(?:(?:occupied|natural|perennial|intermittent|impounded|permanent|flowing|drinking water|abandoned|active|open|surface|farm|fish|commercial|private|residential|aquatic|fresh ?water|marine|public|non-?target|standpipe|tile|drainage|downwind|sensitive|other|managed|bee|organic|certified organic)\\s+(?:and\\s+|or\\s+)?){0,3})"
                    + "(?<noun>wells?(?: ?heads?)?|sink ?holes?|streams?|rivers?|creeks?|ponds?|lakes?|reservoirs?|ditches|canals?|tile inlets?|standpipes?|inlets?|estuar(?:y|ies)|estuarine areas?|marshes|wetlands|water ?bod(?:y|ies)|bodies of water|surface water(?! ?run-?off)|habitats?|dwellings?|homes?|houses|residences?|schools?|apiar(?:y|ies)|bee ?hives?|hives|bee yards?|organic (?:farms?|fields?|crops?)|crops?|vineyards?|(?:threatened or endangered|endangered or threatened|endangered|threatened) (?:species|\\p{L}+(?: (?:or|and) \\p{Lu}\\p{L}+)?))\\b");
    private static final Pattern MIXING =
            Near.words("\\bmix(?:ed|ing)?\\b|\\bload(?:ed|ing)?\\b|\\bstored?\\b|\\bwash");
    private static final Pattern SPRAYING = Near.words("\\bappl(?:y|ied|ication)\\b|\\bspray");
    private static final Pattern DOWNWIND = Near.words("\\bdownwind\\b|blowing towards?");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            if (!Near.has(sentence, KEEP)) {
                continue;
            }
            List<MeasureText> distances = MeasureText.all(sentence.text(), Measure.LENGTH).stream()
                    .filter(each -> !each.amount().unit().equals("in"))
                    .toList();
            if (distances.size() > MOST) {
                readings.unclear(LabelKind.SETBACK, "the sentence has too many distances", sentence.quote());
            } else if (!distances.isEmpty()) {
                each(sentence, distances, readings);
            }
        }
    }

    /** Each distance with the features behind it, behind the next one, or before it where none follow. */
    private static void each(Sentence sentence, List<MeasureText> distances, Readings readings) {
        String text = sentence.text();
        List<Way> ways = WayWords.each(text, distances);
        boolean follow = FEATURE.matcher(text.substring(distances.get(0).to())).find();
        for (int i = 0; i < distances.size(); i++) {
            int from = distances.get(i).to();
            int to = end(text, distances, i);
            features(
                    sentence,
                    distances.get(i),
                    ways.get(i),
                    follow ? from : 0,
                    follow ? to : distances.get(0).from(),
                    readings);
        }
    }

    /** Up to the next distance that has a feature before it. */
    private static int end(String text, List<MeasureText> distances, int at) {
        for (int next = at + 1; next < distances.size(); next++) {
            int from = distances.get(next).from();
            if (FEATURE.matcher(text.substring(distances.get(at).to(), from)).find()) {
                return from;
            }
        }
        return text.length();
    }

    private static void features(
            Sentence sentence, MeasureText distance, Way way, int from, int to, Readings readings) {
        String text = sentence.text();
        String part = text.substring(from, to);
        Matcher feature = FEATURE.matcher(part);
        boolean mixing = Near.has(sentence, MIXING) && !Near.has(sentence, SPRAYING);
        if (Near.has(sentence, MIXING)
                && Near.has(sentence, SPRAYING)
                && !text.matches("(?is).*\\bmix(?:ed|ing)?\\b.{0,60}\\bappl.*|.*\\bappl.{0,60}\\bmix.*")) {
            mixing = true;
        }
        while (feature.find()) {
            if (feature.group("noun").toLowerCase(Locale.ROOT).matches("crops?")
                    && !feature.group()
                            .toLowerCase(Locale.ROOT)
                            .matches(".*(?:sensitive|non-?target|organic|downwind).*")) {
                continue;
            }
            if (!distance.doubt().isEmpty()) {
                readings.unclear(LabelKind.SETBACK, distance.doubt(), sentence.quote());
                return;
            }
            readings.state(
                    LabelKind.SETBACK,
                    new LabelContent.Distance(
                            feature.group().strip().toLowerCase(Locale.ROOT),
                            kind(feature.group()),
                            MeasureText.as(Qualifier.EXACTLY, distance.amount()),
                            Near.has(sentence, DOWNWIND),
                            mixing,
                            way),
                    sentence.quote());
        }
    }

    /** What the words mean among the features of a field. */
    static @Nullable FeatureKind kind(String words) {
        String text = words.toLowerCase(Locale.ROOT);
        if (text.matches(".*\\bwells?\\b.*")) {
            return FeatureKind.WELL;
        }
        if (text.contains("sink")) {
            return FeatureKind.SINKHOLE;
        }
        if (text.matches(".*(?:stream|river|creek).*")) {
            return FeatureKind.STREAM;
        }
        if (text.matches(".*(?:ditch|canal).*")) {
            return FeatureKind.DITCH;
        }
        if (text.matches(".*(?:pond|lake|reservoir).*")) {
            return FeatureKind.POND;
        }
        if (text.matches(".*(?:inlet|standpipe).*")) {
            return FeatureKind.TILE_INLET;
        }
        if (text.matches(".*(?:dwelling|home|house|residence).*")) {
            return FeatureKind.DWELLING;
        }
        if (text.contains("school")) {
            return FeatureKind.SCHOOL;
        }
        if (text.matches(".*(?:apiar|hive|bee ?yard).*")) {
            return FeatureKind.BEE_YARD;
        }
        if (text.contains("organic")) {
            return FeatureKind.ORGANIC_FIELD;
        }
        if (text.matches(".*(?:habitat|estuar|marsh|wetland).*")) {
            return FeatureKind.HABITAT;
        }
        return text.matches(".*(?:sensitive|non-?target|vineyard).*") ? FeatureKind.SENSITIVE_CROP : null;
    }
}
