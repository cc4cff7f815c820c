package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Droplets;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Way;
import plumbrow.documents.label.grammar.Measure;
import plumbrow.documents.label.grammar.MeasureText;
import plumbrow.documents.label.grammar.WayWords;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** What keeps spray on the field: droplets, wind, height. */
final class DriftPart implements Part {
    private static final String CLASS =
            "(?:extremely fine|very fine|fine|medium|extremely coarse|very coarse|ultra[- ]coarse|coarse)";
    private static final Map<String, Droplets> CLASSES = Map.of(
            "extremely fine", Droplets.EXTREMELY_FINE,
            "very fine", Droplets.VERY_FINE,
            "fine", Droplets.FINE,
            "medium", Droplets.MEDIUM,
            "coarse", Droplets.COARSE,
            "very coarse", Droplets.VERY_COARSE,
            "extremely coarse", Droplets.EXTREMELY_COARSE,
            "ultra coarse", Droplets.ULTRA_COARSE);
    private static final Pattern OR_COARSER = Pattern.compile("(?i)\\b(" + CLASS
            + ")(?:\\s?\\([^)]*\\))?(?:\\s+(?:droplets?|spray))?,?\\s+(?:or|and)\\s+(?:coarser|larger)");
    private static final Pattern BETWEEN =
            Pattern.compile("(?i)\\b(" + CLASS + ")\\s+(?:to|through|-|–)\\s+(" + CLASS + ")\\b");
    private static final Pattern NO_FINER = Pattern.compile(
            "(?i)\\b(?:no|not|do not use[^.]{0,30})\\s+(?:finer|smaller) than\\s+(?:an?\\s+)?(" + CLASS + ")\\b");
    private static final Pattern DROPLET =
            Near.words("\\bdroplet|\\bspectrum\\b|\\bspray quality\\b|\\bnozzle|ASABE|ASAE|\\bcoarser\\b");
    private static final Pattern SOIL = Near.words("\\bsoils?\\b");
    private static final Pattern WIND = Near.words("\\bwinds?\\b");
    private static final Pattern MORE =
            Near.words("\\b(?:exceeds?|exceeding|greater than|more than|above|over|higher than|faster than)\\b");
    private static final Pattern LESS = Near.words("\\b(?:less than|below|under|lower than|slower than)\\b");
    private static final Pattern HEIGHT = Near.words(
            "\\bboom\\b(?! length| width)|\\brelease (?:spray|height)|\\bheight\\b(?=.{0,90}\\b(?:above|over)\\b)|\\b(?:application|nozzle|spray|flight|release|boom) height\\b");
    private static final Pattern ABOVE = Near.words("\\babove\\b|\\bcanopy\\b|\\btarget\\b|\\bheight\\b");
    private static final Pattern CROP_HEIGHT =
            Near.words("(?:corn|soybeans?|wheat|weeds?|crop) (?:is|are|height|reach)");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            if (Near.has(sentence, DROPLET) && !Near.has(sentence, SOIL)) {
                droplets(sentence, readings);
            }
            if (Near.has(sentence, WIND)) {
                wind(sentence, readings);
            }
            if (Near.has(sentence, HEIGHT) && Near.has(sentence, ABOVE) && !Near.has(sentence, CROP_HEIGHT)) {
                height(sentence, readings);
            }
        }
    }

    private static void droplets(Sentence sentence, Readings readings) {
        String text = sentence.text();
        List<Matcher> found = new ArrayList<>();
        for (Pattern pattern : List.of(BETWEEN, OR_COARSER, NO_FINER)) {
            Matcher matcher = pattern.matcher(text);
            if (matcher.find()) {
                found.add(matcher);
                break;
            }
        }
        if (found.isEmpty()) {
            return;
        }
        Matcher match = found.get(0);
        @Nullable Droplets coarsest = match.groupCount() > 1 ? named(match.group(2)) : null;
        readings.state(
                LabelKind.DROPLETS,
                new LabelContent.Drops(named(match.group(1)), coarsest, WayWords.in(text)),
                sentence.quote());
    }

    private static @Nullable Droplets named(String words) {
        return CLASSES.get(words.toLowerCase(Locale.ROOT).replace('-', ' '));
    }

    private static void wind(Sentence sentence, Readings readings) {
        String text = sentence.text();
        List<MeasureText> speeds = MeasureText.all(text, Measure.SPEED);
        boolean not = Near.has(sentence, Near.DO_NOT);
        for (MeasureText speed : speeds) {
            if (!speed.doubt().isEmpty()) {
                readings.unclear(LabelKind.WIND, speed.doubt(), sentence.quote());
                continue;
            }
            Amount amount = speed.amount();
            Amount limit = amount.qualifier() == Qualifier.RANGE ? not ? null : amount : limit(text, speed, not);
            if (limit == null) {
                readings.unclear(
                        LabelKind.WIND,
                        "it isn't clear on which side of " + amount.words() + " spraying is allowed",
                        sentence.quote());
            } else {
                readings.state(LabelKind.WIND, new LabelContent.Measured(limit, WayWords.in(text)), sentence.quote());
            }
        }
    }

    private static @Nullable Amount limit(String text, MeasureText speed, boolean not) {
        int start = Math.max(0, speed.from() - 40);
        String near = text.substring(start, Math.min(text.length(), speed.from() + 14));
        String behind = text.substring(speed.to(), Math.min(text.length(), speed.to() + 14))
                .toLowerCase(Locale.ROOT);
        boolean more = MORE.matcher(near).find() || behind.matches("\\s*(?:or (?:more|greater|higher)).*");
        boolean less = LESS.matcher(near).find() || behind.matches("\\s*or less.*");
        if (more && less) {
            more = lastOf(near, MORE) > lastOf(near, LESS);
            less = !more;
        }
        Qualifier sign = speed.amount().qualifier();
        if (!more && !less) {
            return sign == Qualifier.AT_MOST || sign == Qualifier.AT_LEAST ? speed.amount() : null;
        }
        boolean most = not ? more : less;
        return MeasureText.as(most ? Qualifier.AT_MOST : Qualifier.AT_LEAST, speed.amount());
    }

    private static int lastOf(String text, Pattern words) {
        Matcher found = words.matcher(text);
        int last = -1;
        while (found.find()) {
            last = found.start();
        }
        return last;
    }

    /** "Do not apply by aircraft at a height less than 100 feet". */
    private static boolean least(Sentence sentence, MeasureText height) {
        String before = sentence.text().substring(Math.max(0, height.from() - 30), height.from() + 12);
        boolean less = LESS.matcher(before).find()
                || height.amount().qualifier() == Qualifier.LESS_THAN
                || height.amount().qualifier() == Qualifier.AT_LEAST;
        boolean not = Near.has(sentence, Near.DO_NOT);
        return height.amount().qualifier() == Qualifier.AT_LEAST ? !not : less && not;
    }

    private static void height(Sentence sentence, Readings readings) {
        List<MeasureText> heights = MeasureText.all(sentence.text(), Measure.LENGTH);
        List<Way> ways = WayWords.each(sentence.text(), heights);
        for (int i = 0; i < heights.size(); i++) {
            MeasureText height = heights.get(i);
            boolean drift = height.amount().unit().equals("mile")
                    || height.amount().unit().equals("yd");
            if (drift || Near.has(sentence, Near.words("\\bbuffer|downwind|\\bwithin\\b"))) {
                continue;
            }
            if (!height.doubt().isEmpty()) {
                readings.unclear(LabelKind.BOOM, height.doubt(), sentence.quote());
                continue;
            }
            boolean least = least(sentence, height);
            if (least && ways.get(i) != Way.AIR) {
                readings.unclear(
                        LabelKind.BOOM,
                        "it isn't clear on which side of " + height.amount().words() + " spraying is allowed",
                        sentence.quote());
                continue;
            }
            readings.state(
                    LabelKind.BOOM,
                    new LabelContent.Measured(
                            MeasureText.as(least ? Qualifier.AT_LEAST : Qualifier.AT_MOST, height.amount()),
                            ways.get(i)),
                    sentence.quote());
        }
    }
}
