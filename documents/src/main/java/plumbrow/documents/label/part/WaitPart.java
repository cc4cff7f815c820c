package plumbrow.documents.label.part;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.grammar.Measure;
import plumbrow.documents.label.grammar.MeasureText;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** Time that must pass: before entry, before harvest, before grazing, between applications. */
final class WaitPart implements Part {
    private static final Pattern ENTRY = Near.words("\\bre-?entry\\b|restricted[- ]?entry|\\bREI\\b");
    private static final Pattern NO_ENTRY_WAIT =
            Near.words("early[- ]entry|notify|PPE required|except|exception|decontamination");
    private static final Pattern FEED = Near.words(
            "\\bgraz|\\bfeed(?:ing)?\\b|\\bforage\\b|\\bhay\\b|\\bsilage\\b|\\bstraw\\b|\\bstover\\b|\\bfodder\\b|livestock");
    private static final Pattern HARVEST = Near.words("\\bharvest|\\bPHI\\b|pre-?harvest");
    private static final Pattern HARVEST_TO_FEED = Near.words(
            "harvest(?:ing)?(?: of)?(?: the)?(?: treated)?(?: \\w+){0,2}? (?:for )?(?:forage|hay|silage|straw|stover|fodder|livestock|feed)");
    private static final Pattern GRAIN = Near.words(
            "\\bgrain\\b|\\bPHI\\b|pre-?harvest|\\bseed harvest|harvest (?:corn|soybeans?|wheat)\\b(?! forage| hay| silage)");
    private static final Pattern BEFORE_HARVEST = Near.words("days (?:of|before|prior to) harvest\\b(?! (?:for|of) )");
    private static final Pattern DAY_OF_HARVEST =
            Near.words("\\b(?:up to|until|through|on) (?:and including )?(?:the )?(?:day of harvest|harvest day)\\b");
    private static final Pattern AGAIN = Near.words(
            "between (?:\\w+ ){0,4}(?:re-?)?(?:applications?|treatments?|sprays)|re-?appl(?:y|ication)|re-?treatment|days apart|minimum (?:application )?interval|\\bapplication interval|sequential applications|\\brepeat(?:ed)? (?:the )?(?:application |treatment )?after\\b|after the (?:preceding|previous|prior) application");
    private static final Pattern PLANTING = Near.words("\\bplant(?:ed|ing)?\\b|rotat|\\breplant|\\bsow");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            if (sentence.topic() == Topic.STORAGE
                    || sentence.topic() == Topic.WARRANTY
                    || sentence.topic() == Topic.FIRST_AID) {
                continue;
            }
            entry(sentence, readings);
            if (sentence.topic() != Topic.ROTATION) {
                feed(sentence, readings);
                harvest(sentence, readings);
                again(sentence, readings);
            }
        }
    }

    private static void entry(Sentence sentence, Readings readings) {
        boolean under = ENTRY.matcher(sentence.under()).find() && sentence.topic() == Topic.AGRICULTURAL_USE;
        if ((!Near.has(sentence, ENTRY) && !under) || Near.has(sentence, NO_ENTRY_WAIT)) {
            return;
        }
        List<MeasureText> times = hours(sentence.text());
        if (times.size() > 1
                && times.stream().map(time -> time.amount().low()).distinct().count() > 1) {
            each(sentence, times, readings);
            return;
        }
        if (!times.isEmpty()) {
            String crop = sentence.topic() == Topic.AGRICULTURAL_USE ? cropFor(sentence.text()) : Near.crop(sentence);
            put(LabelKind.REENTRY, sentence, crop, times.get(0), "", readings);
        }
    }

    private static List<MeasureText> hours(String text) {
        return MeasureText.all(text, Measure.TIME).stream()
                .filter(time ->
                        time.amount().unit().equals("h") || time.amount().unit().equals("d"))
                .toList();
    }

    private static String cropFor(String text) {
        return plumbrow.documents.label.grammar.CropWords.in(text).orElse("");
    }

    /** "12 hours for corn and 24 hours for wheat": each with the words up to the next. */
    private static void each(Sentence sentence, List<MeasureText> times, Readings readings) {
        for (int i = 0; i < times.size(); i++) {
            int to = i + 1 < times.size()
                    ? times.get(i + 1).from()
                    : sentence.text().length();
            String crop = cropFor(sentence.text().substring(times.get(i).to(), to));
            if (crop.isEmpty()) {
                readings.unclear(LabelKind.REENTRY, "more than one time stands in the sentence", sentence.quote());
                return;
            }
        }
        for (int i = 0; i < times.size(); i++) {
            int to = i + 1 < times.size()
                    ? times.get(i + 1).from()
                    : sentence.text().length();
            String crop = cropFor(sentence.text().substring(times.get(i).to(), to));
            put(LabelKind.REENTRY, sentence, crop, times.get(i), "", readings);
        }
    }

    private static void feed(Sentence sentence, Readings readings) {
        if (!Near.has(sentence, FEED) || Near.has(sentence, PLANTING)) {
            return;
        }
        boolean onlyGrain = Near.has(sentence, HARVEST)
                && !sentence.text().matches("(?is).*\\b(?:graz|feed|forage|hay|silage|straw|stover|fodder).*");
        if (onlyGrain) {
            return;
        }
        time(LabelKind.GRAZING, sentence, readings)
                .ifPresent(time -> put(LabelKind.GRAZING, sentence, Near.crop(sentence), time, "", readings));
        if (Near.has(sentence, Near.DO_NOT)
                && MeasureText.first(sentence.text(), Measure.TIME).isEmpty()) {
            String words = sentence.text().replaceAll("\\s+", " ").replaceAll("\\.$", "");
            readings.state(LabelKind.GRAZING, new LabelContent.Ban(Near.crop(sentence), words), sentence.quote());
        }
    }

    private static void harvest(Sentence sentence, Readings readings) {
        boolean fed = Near.has(sentence, FEED) || Near.has(sentence, HARVEST_TO_FEED);
        if (!Near.has(sentence, HARVEST)
                || (fed && !Near.has(sentence, GRAIN) && !Near.has(sentence, BEFORE_HARVEST))
                || Near.has(sentence, PLANTING)) {
            return;
        }
        if (Near.has(sentence, DAY_OF_HARVEST)
                && MeasureText.first(sentence.text(), Measure.TIME).isEmpty()) {
            Amount none = new Amount(Qualifier.EXACTLY, 0, 0, "d", Amount.Conditions.NONE);
            readings.state(
                    LabelKind.PRE_HARVEST, new LabelContent.Interval(Near.crop(sentence), none, ""), sentence.quote());
            return;
        }
        time(LabelKind.PRE_HARVEST, sentence, readings)
                .ifPresent(time -> put(LabelKind.PRE_HARVEST, sentence, Near.crop(sentence), time, "", readings));
    }

    private static void again(Sentence sentence, Readings readings) {
        boolean harvest = Near.has(sentence, HARVEST) || Near.has(sentence, FEED);
        if (!Near.has(sentence, AGAIN)
                || harvest
                || Near.has(sentence, PLANTING)
                || Near.has(sentence, Near.words("\\brain"))) {
            return;
        }
        time(LabelKind.REAPPLICATION, sentence, readings)
                .ifPresent(time -> put(LabelKind.REAPPLICATION, sentence, Near.crop(sentence), time, "", readings));
    }

    /** The one time of a sentence; where several differ, the reading is left to a person. */
    private static Optional<MeasureText> time(LabelKind kind, Sentence sentence, Readings readings) {
        List<MeasureText> times = MeasureText.all(sentence.text(), Measure.TIME);
        if (times.stream().map(time -> time.amount().words()).distinct().count() > 1) {
            readings.unclear(kind, "more than one time stands in the sentence", sentence.quote());
            return Optional.empty();
        }
        return times.stream().findFirst();
    }

    private static void put(
            LabelKind kind, Sentence sentence, String crop, MeasureText time, String condition, Readings readings) {
        if (!time.doubt().isEmpty()) {
            readings.unclear(kind, time.doubt(), sentence.quote());
            return;
        }
        if (time.amount().qualifier() == Qualifier.RANGE) {
            readings.unclear(kind, "a range stands where one time is expected", sentence.quote());
            return;
        }
        Amount plain = MeasureText.as(Qualifier.EXACTLY, time.amount());
        readings.state(kind, new LabelContent.Interval(crop, plain, condition), sentence.quote());
    }
}
