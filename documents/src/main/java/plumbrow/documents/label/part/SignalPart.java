package plumbrow.documents.label.part;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;

/** What stands large on the front: signal word, children, restricted use. */
final class SignalPart implements Part {
    private static final Pattern SIGNAL = Pattern.compile(
            "(?iu)\\W{0,3}(?:signal word\\s?:?\\s*)?(danger|warning|caution)(?:\\s*[-–—/]?\\s*(poison))?(?:\\s*[-–—/]\\s*(?:peligro|aviso|precauci[oó]n|veneno))*(?:\\s+(?:peligro|veneno))?\\W{0,3}");
    private static final Pattern CHILDREN = Pattern.compile("(?i)\\bkeep out of (?:the )?reach of children\\b\\.?");
    private static final Pattern RESTRICTED =
            Pattern.compile("(?i)\\W{0,3}(?:federally\\s+)?restricted[- ]use pesticide\\b(?!s| label).{0,20}");
    private static final Pattern NOT_RESTRICTED =
            Pattern.compile("(?i)\\b(?:not|isn't) (?:a |classified as )?(?:a )?restricted");
    private static final Set<Topic> BACK = Set.of(
            Topic.CROP,
            Topic.ROTATION,
            Topic.DRIFT,
            Topic.MIXING,
            Topic.APPLICATION,
            Topic.WARRANTY,
            Topic.RESISTANCE,
            Topic.STORAGE);

    @Override
    public void read(LabelText label, Readings readings) {
        label.heads().forEach(row -> row.cells().forEach(cell -> cell(Passage.of(row.page(), cell), readings)));
        for (LabelText.Line line : label.lines()) {
            if (BACK.contains(line.topic())) {
                continue;
            }
            for (Cell cell : line.row().cells()) {
                cell(Passage.of(line.row().page(), cell), readings);
            }
        }
    }

    private static void cell(Passage cell, Readings readings) {
        String text = cell.text();
        Matcher signal = SIGNAL.matcher(text);
        boolean loud =
                signal.matches() && (text.contains(signal.group(1).toUpperCase(Locale.ROOT)) || text.contains(":"));
        if (loud) {
            String word = signal.group(1).toUpperCase(Locale.ROOT) + (signal.group(2) == null ? "" : " - POISON");
            readings.text(LabelKind.SIGNAL_WORD, word, cell.quote());
        }
        Matcher children = CHILDREN.matcher(text);
        if (children.find() && !readings.has(LabelKind.CHILD_STATEMENT)) {
            readings.text(
                    LabelKind.CHILD_STATEMENT,
                    "Keep out of reach of children",
                    cell.quote(children.start(), children.end()));
        }
        if (RESTRICTED.matcher(text).matches() && !NOT_RESTRICTED.matcher(text).find()) {
            readings.text(LabelKind.RESTRICTED_USE, "Restricted use pesticide", cell.quote());
        }
    }
}
