package plumbrow.documents.label.part;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;

/** Where and by whom the product may be used, when people may come back where nothing but drying is asked, and drift in words. */
final class WherePart implements Part {
    private static final Pattern ONLY = Pattern.compile(
            "(?i)(?<what>\\bfor (?:retail )?sale to and use only by\\b.*|\\bfor use only (?:by|in|on|around|at)\\b.*|\\bfor use (?:by|in|on|around|at)\\b[^.;]{2,90}\\bonly\\b.*"
                    + "|\\bfor (?:(?!sale|control|best|use\\b)[\\p{L}/-]+\\s+){1,5}(?:use(?: sites?)?|areas?|sites?) only\\b.*"
                    + "|\\bnot (?:for (?:use|sale|distribution)|registered for (?:use|sale))\\b[^.;]{0,60}?\\bin(?:to)?\\b.*|\\bnot to be (?:applied to|used (?:in|on))\\b.*"
                    + "|^in [A-Z][\\p{L} ]{2,40}:.*\\bonly\\b.*|\\bdo not (?:use|apply|sell)[^.;]{0,30} in (?:the )?(?:states?|counties|county|parish(?:es)?) of\\b.*"
                    + "|\\b(?:may|can) (?:only )?be (?:used|applied)[^.;]{0,20} only in\\b.*|\\buse only in (?:the )?(?:states?|following|counties)\\b.*)",
            Pattern.DOTALL);
    private static final Pattern SAID_OF_PRODUCT = Pattern.compile("(?i)^this product is $");
    private static final Pattern KEEP_OUT = Near.words(
            "(?:\\bdo not (?:allow|let|permit|enter|re-?enter)\\b|\\bkeep (?:[\\p{L},]+\\s+){1,6}(?:out|off|away)\\b|\\bshould not be (?:allowed|permitted) (?:in|into|on)\\b|\\b(?:can|may) re-?enter\\b|\\bremain outside\\b|\\bkeep off\\b)"
                    + ".*\\b(?:until|once|before|when|after)\\b.*\\b(?:dry|dries|dried|settled|dispersed|ventilated|aired)\\b"
                    + "|\\bdo not re-?enter\\b.*\\b(?:for (?:at least |a minimum of )?(?:\\d|one|two|three|four|six|eight|twelve|twenty)|until (?:the|it|all|vapors|spray))");
    private static final Pattern BEGINS = Near.words(
            "^\\W{0,2}(?:keep|do not|exit|leave|people|persons|adults|children|workers|pets|remain|stay|never|no (?:one|person)|avoid|wait|treated)\\b");
    private static final Pattern DRIFT = Near.words(
            "\\b(?:spray )?drift\\b.*\\b(?:responsib|site|avoid|potential|applicator)|\\bavoid(?:ing)?\\b.{0,30}\\bdrift|\\bpotential for (?:spray )?drift|\\bdo not\\b.*\\bwhen\\b.*\\b(?:favou?rs?|cause)\\b.*\\bdrift|\\bminimi[sz]e\\b.{0,30}\\bdrift");
    private static final Pattern NO_DRIFT = Near.words(
            "either directly or through drift|\\bbees?\\b|\\bbloom|\\bblow or wash\\b|\\bmay be hazardous\\b");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            if (sentence.topic() == Topic.WARRANTY && !Near.has(sentence, ONLY)) {
                continue;
            }
            where(sentence, readings);
            if (Near.has(sentence, KEEP_OUT)
                    && Near.has(sentence, BEGINS)
                    && sentence.topic() != Topic.AGRICULTURAL_USE) {
                readings.text(LabelKind.KEEP_OUT, plain(sentence.text()), sentence.quote());
            }
        }
        new DriftText(readings).read(label);
    }

    private static void where(Sentence sentence, Readings readings) {
        Matcher only = ONLY.matcher(sentence.text());
        if (!only.find() || sentence.topic() == Topic.STORAGE) {
            return;
        }
        int from = SAID_OF_PRODUCT
                        .matcher(sentence.text().substring(0, only.start()))
                        .matches()
                ? 0
                : only.start();
        String words = plain(sentence.text().substring(from));
        readings.text(
                LabelKind.WHERE,
                words,
                sentence.passage().quote(from, sentence.text().length()));
    }

    static String plain(String text) {
        return text.replaceAll("\\s+", " ").replaceAll("[.\\s]+$", "").strip();
    }

    /** Sentences on drift that follow one another, as one text. */
    private static final class DriftText {
        private final Readings readings;
        private plumbrow.documents.paper.Passage.Builder text = new plumbrow.documents.paper.Passage.Builder();

        DriftText(Readings readings) {
            this.readings = readings;
        }

        void read(LabelText label) {
            boolean open = false;
            for (Sentence sentence : label.sentences()) {
                boolean about = Near.has(sentence, DRIFT) && !Near.has(sentence, NO_DRIFT);
                boolean goesOn = open && GOES_ON.matcher(sentence.text()).find();
                if (about || goesOn) {
                    if (about
                            && open
                            && !goesOn
                            && STARTS.matcher(sentence.text()).find()) {
                        close();
                    }
                    text.line(sentence.passage()).endLine();
                    open = true;
                } else {
                    close();
                    open = false;
                }
            }
            close();
        }

        private void close() {
            if (!text.isEmpty()) {
                readings.text(
                        LabelKind.DRIFT,
                        plain(text.build().text()),
                        text.build().quote());
            }
            text = new plumbrow.documents.paper.Passage.Builder();
        }
    }

    private static final Pattern GOES_ON =
            Pattern.compile("(?i)^(?:the interaction of|the applicator (?:and|is)|these factors|all of these)\\b");
    private static final Pattern STARTS = Pattern.compile("(?i)^(?:avoid|do not|minimi[sz]e)\\b");
}
