package plumbrow.documents.label.part;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;

/** Growth stages of a crop between which it may be treated: "V2 through V8", "not after R1", "before VT". */
final class StagePart implements Part {
    private static final String STAGE =
            "(?:(?:the\\s)?(?:Feekes(?:\\sstage)?\\s(?:\\d{1,2}(?:\\.\\d)?)|V[ECT]|V\\d{1,2}|R[1-8])(?![\\d-]\\d))";
    private static final String NOTE = "(?:\\s?\\([^)]{1,40}\\))?(?:\\s(?:leaf\\s|growth\\s)?stage)?";
    private static final Pattern BETWEEN = Pattern.compile("(?i)\\b(?:from|between|at)?\\s?(?<from>" + STAGE + ")"
            + NOTE + "\\s?(?:to|through|thru|and|until|up to|-|–)\\s?(?<to>" + STAGE + ")");
    private static final Pattern LATEST = Pattern.compile(
            "(?i)\\b(?:after|beyond|past|later than|up to|through|until)\\s(?:and including\\s)?(?:the\\s|corn\\s|soybeans?\\s|wheat\\s|crop\\s)?(?:reaches\\s)?(?<stage>"
                    + STAGE + ")");
    private static final Pattern BEFORE = Pattern.compile(
            "(?i)\\b(?:before|prior to)\\s(?:the\\s|corn\\s|soybeans?\\s|wheat\\s|crop\\s)?(?:reaches\\s)?(?<stage>"
                    + STAGE + ")");
    private static final Pattern APPLY = Near.words("\\bappl(?:y|ied|ication)|\\bspray|\\btreat|\\buse\\b|\\bmake\\b");
    private static final Pattern AFTER = Near.words("\\bafter\\b|\\bbeyond\\b|\\bpast\\b|\\blater than\\b");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            if (sentence.topic() != Topic.ROTATION && sentence.topic() != Topic.STORAGE && Near.has(sentence, APPLY)) {
                read(sentence, readings);
            }
        }
    }

    private static void read(Sentence sentence, Readings readings) {
        String text = sentence.text();
        boolean ban = Near.has(sentence, Near.DO_NOT);
        Matcher between = BETWEEN.matcher(text);
        if (between.find()) {
            if (ban) {
                readings.unclear(
                        LabelKind.STAGE, "a ban between two stages, which may leave others open", sentence.quote());
            } else {
                put(sentence, stage(between.group("from")), stage(between.group("to")), "", readings);
            }
            return;
        }
        Matcher before = BEFORE.matcher(text);
        if (before.find()) {
            String stage = stage(before.group("stage"));
            put(sentence, ban ? stage : "", "", ban ? "" : stage, readings);
            return;
        }
        Matcher latest = LATEST.matcher(text);
        if (latest.find()) {
            boolean after = AFTER.matcher(latest.group()).find();
            if (after == ban) {
                put(sentence, "", stage(latest.group("stage")), "", readings);
            } else {
                readings.unclear(
                        LabelKind.STAGE, "a stage, but not whether it is the first or the last", sentence.quote());
            }
        }
    }

    private static void put(Sentence sentence, String earliest, String latest, String before, Readings readings) {
        readings.state(
                LabelKind.STAGE,
                new LabelContent.Stage(Near.cropMeant(sentence), earliest, latest, before),
                sentence.quote());
    }

    /** "V8", "R1"; of Feekes the number alone. */
    private static String stage(String printed) {
        return printed.toUpperCase(Locale.ROOT)
                .replaceAll("^THE\\s|FEEKES(?:\\sSTAGE)?\\s", "")
                .strip();
    }
}
