package plumbrow.documents.label.part;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;

/** Telephones for emergencies; a number for questions about the product is none. */
final class PhonePart implements Part {
    private static final Pattern NUMBER =
            Pattern.compile("(?<![\\d-])(?:1[-. ])?(?:\\(\\d{3}\\)\\s?|\\d{3}[-. ])\\d{3}[-. ]\\d{4}(?![\\d-])");
    private static final Pattern EMERGENCY =
            Near.words("(?<!non-)(?<!non )\\bemergenc|\\bpoison|\\bmedical\\b|\\bspills?\\b|\\bfire\\b|\\baccident");
    private static final Pattern OTHERWISE = Near.words(
            "\\bnon-?emergency|\\bquestions\\b|\\bcomments\\b|\\b(?:general|product|other|more|additional) information\\b|\\bcustomer");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            if (!Near.has(sentence, EMERGENCY) || Near.has(sentence, OTHERWISE)) {
                continue;
            }
            Matcher number = NUMBER.matcher(sentence.text());
            while (number.find()) {
                readings.text(
                        LabelKind.TELEPHONE,
                        number.group().replaceAll("\\s+", " "),
                        sentence.passage().quote(number.start(), number.end()));
            }
        }
    }
}
