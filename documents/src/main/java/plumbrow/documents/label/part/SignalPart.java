package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;

/** What stands large on the front: signal word, children, restricted use. */
final class SignalPart implements Part {
    private static final Pattern SIGNAL = Pattern.compile(
            "(?iu)\\W{0,3}(?:signal word\\s?:?\\s*)?(danger|warning|caution)(?:\\s*[-–—/]?\\s*(poison))?(?:\\s*[-–—/]\\s*(?:peligro|aviso|precauci[oó]n|veneno))*(?:\\s+(?:peligro|veneno))?\\W{0,3}");
    private static final Pattern CHILDREN = Pattern.compile("(?i)\\bkeep out of (?:the )?reach of children\\b\\.?");
    private static final Pattern RESTRICTED =
            Pattern.compile("(?i)\\W{0,3}(?:federally\\s+)?restricted[- ]use pesticide\\b(?!s| label).{0,20}");
    private static final int LINES = 3;
    private static final Pattern NOT_RESTRICTED =
            Pattern.compile("(?i)\\b(?:not|isn't) (?:a |classified as )?(?:a )?restricted");
    /** The word at the head of a sentence or of a reference to the back: "CAUTION. Harmful if swallowed". */
    private static final Pattern LEADS = Pattern.compile(
            "^\\W{0,3}(CAUTION|WARNING|DANGER)(?:\\s*[-–—/]?\\s*(POISON))?(?:\\s*[/–-]\\s*(?:AVISO|PELIGRO|PRECAUCI[OÓ]N))?(?:[.:!]\\s.*|\\s+(?i:see|precautionary|for additional)\\b.*)");

    private static final Pattern LEADS_ON_FRONT =
            Pattern.compile("^.{0,60}\\b(CAUTION)()\\s?(?i:S?\\s?(?:ee)?\\s?precautionary statements)\\b.*");
    private static final Pattern HALF = Pattern.compile("(?i).*\\bkeep out of reach\\W*");
    private static final Pattern OTHER_HALF = Pattern.compile("(?i)\\W*of children\\b.*");
    private static final Set<Topic> BACK = Set.of(
            Topic.CROP, Topic.ROTATION, Topic.DRIFT, Topic.MIXING, Topic.APPLICATION, Topic.RESISTANCE, Topic.STORAGE);

    @Override
    public void read(LabelText label, Readings readings) {
        List<Row> front = new ArrayList<>(label.heads());
        label.lines().stream().filter(line -> !BACK.contains(line.topic())).forEach(line -> front.add(line.row()));
        front.forEach(row -> row.cells().forEach(cell -> cell(Passage.of(row.page(), cell), readings)));
        List<Row> all = new ArrayList<>(label.heads());
        label.lines().forEach(line -> all.add(line.row()));
        if (!readings.has(LabelKind.SIGNAL_WORD)) {
            leading(all, LEADS, readings);
        }
        if (!readings.has(LabelKind.SIGNAL_WORD)) {
            leading(all, LEADS_ON_FRONT, readings);
        }
        if (!readings.has(LabelKind.CHILD_STATEMENT)) {
            children(all, readings);
        }
    }

    private static void leading(List<Row> rows, Pattern pattern, Readings readings) {
        for (Row row : rows) {
            for (Cell cell : row.cells()) {
                Matcher leads = pattern.matcher(cell.text());
                if (leads.matches()) {
                    String poison = leads.group(2);
                    readings.text(
                            LabelKind.SIGNAL_WORD,
                            leads.group(1) + (poison == null || poison.isEmpty() ? "" : " - POISON"),
                            Passage.of(row.page(), cell).quote());
                }
            }
        }
    }

    /** Anywhere, and over two lines. */
    private static void children(List<Row> rows, Readings readings) {
        for (int i = 0; i < rows.size(); i++) {
            for (Cell cell : rows.get(i).cells()) {
                Matcher whole = CHILDREN.matcher(cell.text());
                boolean halved = HALF.matcher(cell.text()).matches()
                        && rows.subList(i + 1, Math.min(rows.size(), i + 1 + LINES)).stream()
                                .flatMap(row -> row.cells().stream())
                                .anyMatch(below ->
                                        OTHER_HALF.matcher(below.text()).matches()
                                                && below.left() < cell.right()
                                                && below.right() > cell.left());
                if (whole.find() || halved) {
                    readings.text(
                            LabelKind.CHILD_STATEMENT,
                            "Keep out of reach of children",
                            Passage.of(rows.get(i).page(), cell).quote());
                    return;
                }
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
