package plumbrow.documents.label.part;

import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;

/** What goes into the tank beside product and water, sentence by sentence. */
final class AdjuvantPart implements Part {
    private static final Pattern ADJUVANT = Near.words(
            "\\bsurfactants?\\b|\\bNIS\\b|\\bcrop oil|\\boil concentrate|\\bCOC\\b|\\bseed oil\\b|\\bMSO\\b|\\bammonium sulfate\\b|\\bAMS\\b|\\bUAN\\b|\\badjuvants?\\b");
    private static final Pattern ASKED = Near.words(
            "\\b(?:add|adding|include|use|apply with|must|required?|recommended|at)\\b.*(?:\\d|\\b(?:must|required?|recommended|always)\\b)");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            boolean place = sentence.topic() != Topic.STORAGE
                    && sentence.topic() != Topic.WARRANTY
                    && sentence.topic() != Topic.INGREDIENTS
                    && sentence.topic() != Topic.FIRST_AID;
            if (place
                    && Near.has(sentence, ADJUVANT)
                    && Near.has(sentence, ASKED)
                    && !Near.has(sentence, Near.DO_NOT)) {
                readings.text(LabelKind.ADJUVANT, WherePart.plain(sentence.text()), sentence.quote());
            }
        }
    }
}
