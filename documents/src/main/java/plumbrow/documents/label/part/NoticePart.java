package plumbrow.documents.label.part;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;

/** Statements that protect bees, ground water and rare creatures, word by word. */
final class NoticePart implements Part {
    private static final Map<LabelKind, List<Pattern>> NOTICES = new EnumMap<>(LabelKind.class);

    static {
        NOTICES.put(
                LabelKind.BEES,
                List.of(
                        Near.words("\\bbees?\\b|\\bpollinat|\\bbloom|\\bflower"),
                        Near.words(
                                "\\b(?:do not|not) (?:apply|allow|use|spray|make)(?! (?:closer|within|more))|\\bapply only\\b|\\bprohibited\\b")));
        NOTICES.put(
                LabelKind.SATURATED_SOIL,
                List.of(
                        Near.words("\\bsaturated\\b|\\bfrozen\\b|\\bsnow\\b|\\bfield capacity\\b|standing water"),
                        Near.words("\\bdo not (?:apply|use|spray)|\\bprohibited\\b|\\bmust not be applied\\b")));
        NOTICES.put(
                LabelKind.GROUND_WATER,
                List.of(
                        Near.words("\\bground ?-?water\\b"),
                        Near.words(
                                "\\bleach|\\bpermeable\\b|\\bwater table\\b|\\bknown to\\b|\\bmay result in\\b|\\bcontaminat|\\bdetected\\b")));
        NOTICES.put(
                LabelKind.BULLETIN,
                List.of(
                        Near.words("\\bbulletins?\\b"),
                        Near.words(
                                "endangered|threatened|\\bESA\\b|\\bbulletins? live\\b|\\bspecies\\b|\\bobtain\\b|\\bfollow\\b")));
    }

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            NOTICES.forEach((kind, words) -> {
                boolean meant = words.stream().allMatch(each -> Near.has(sentence, each));
                if (meant) {
                    readings.text(
                            kind, sentence.text().replaceAll("\\s+", " ").replaceAll("\\.$", ""), sentence.quote());
                }
            });
        }
    }
}
