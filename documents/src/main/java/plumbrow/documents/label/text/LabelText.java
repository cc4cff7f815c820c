package plumbrow.documents.label.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbrow.documents.label.grammar.CropWords;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;

/** A label as its part readers see it: lines with their topic, sentences with what they stand under, and tables. */
public final class LabelText {
    private static final Pattern ENDED = Pattern.compile(".*[.:!?)]|.*\\d");
    private static final Pattern LEADS_IN = Pattern.compile(".{3,160}:\\s*");
    private static final int LONGEST_CAPTION = 140;
    /** What follows the name of a crop where its uses begin, and not its wait in a list of rotational crops. */
    private static final Pattern USES = Pattern.compile(
            "(?i)^\\W*(?:apply|broadcast|for (?:pre|post|control|use|best|early)|use\\b|do not (?:apply|exceed|make)|make\\b|this product|directions|application|rates?\\b|timing|pre-?emergence|post-?emergence|burndown)");

    private static final Pattern REMARK = Pattern.compile("(?:\\S+\\s+){3,}\\S+[.!]?\\s*", Pattern.DOTALL);

    /** A trade mark's sign or a bar alone says nothing. */
    private static final Pattern SAYS = Pattern.compile("[\\p{L}\\p{N}]");

    private static final int LONGEST_SECOND = 30;
    private static final Pattern INDEX = Pattern.compile("(?i)\\W*(?:index|(?:table of )?contents)\\s?:?");
    private static final Pattern INDEX_LINE = Pattern.compile("\\s*\\d{1,2}(?:\\.\\d{1,2}){0,2}\\.?\\s+\\p{L}.{2,90}");

    /** A line and what it stands under. */
    public record Line(Row row, Topic topic) {}

    private final List<Row> heads;
    private final List<Line> lines = new ArrayList<>();
    private final List<Sentence> sentences = new ArrayList<>();
    private final List<Grid> grids = new ArrayList<>();
    private final boolean lineByLine;
    private final List<Row> run = new ArrayList<>();
    private Topic topic = Topic.FRONT;
    private String crop = "";
    private String under = "";

    private LabelText(Paper paper) {
        heads = paper.heads();
        lineByLine = paper.kind() == Paper.Kind.HTML;
        List<Row> rows = Foreign.without(paper.rows()).stream()
                .filter(row -> SAYS.matcher(row.text()).find())
                .toList();
        int at = 0;
        while (at < rows.size()) {
            at = take(rows, at);
        }
        close();
    }

    public static LabelText of(Paper paper) {
        return new LabelText(paper);
    }

    /** Running heads and feet, each once. */
    public List<Row> heads() {
        return heads;
    }

    public List<Line> lines() {
        return lines;
    }

    public List<Sentence> sentences() {
        return sentences;
    }

    public List<Grid> grids() {
        return grids;
    }

    private int take(List<Row> rows, int at) {
        Row row = rows.get(at);
        String text = row.text();
        if (INDEX.matcher(text).matches()) {
            return skipIndex(rows, at);
        }
        Optional<Topic> halved = overTwoLines(rows, at);
        if (halved.isPresent()) {
            close();
            topic = halved.get();
            crop = "";
            under = text + " " + rows.get(at + 1).text();
            lines.add(new Line(row, topic));
            lines.add(new Line(rows.get(at + 1), topic));
            return at + 2;
        }
        Optional<Topic> known = Topics.of(text);
        if (known.isPresent()) {
            close();
            topic = known.get();
            crop = "";
            under = text;
            lines.add(new Line(row, topic));
            return at + 1;
        }
        Optional<Grids.Found> table = Grids.at(rows, at);
        if (table.isPresent()) {
            String caption = run.isEmpty() ? under : run.get(run.size() - 1).text();
            close();
            Grids.Found found = table.get();
            Optional<List<List<Row>>> prose = Grids.prose(found, rows, at);
            if (prose.isPresent()) {
                rows.subList(at, found.end()).forEach(each -> lines.add(new Line(each, topic)));
                for (List<Row> side : prose.get()) {
                    run.addAll(side);
                    close();
                }
                return found.end();
            }
            grids.add(new Grid(
                    found.table().heads(),
                    found.columns(),
                    Grids.records(found),
                    topic,
                    crop,
                    caption.length() > LONGEST_CAPTION ? "" : caption));
            remarks(grids.get(grids.size() - 1));
            List<Row> used = found.table().rows();
            List<Row> rest = rows.subList(at, found.body()).stream()
                    .filter(each -> !used.contains(each))
                    .toList();
            rest.forEach(each -> lines.add(new Line(each, topic)));
            run.addAll(rest);
            return found.end();
        }
        lines.add(new Line(row, topic));
        Optional<String> named = startsAnew(row) ? CropWords.heading(text) : Optional.empty();
        boolean uses = topic != Topic.ROTATION
                || (Prose.isShout(text)
                        && at + 1 < rows.size()
                        && USES.matcher(rows.get(at + 1).text()).find());
        if (named.isPresent() && topic != Topic.FIRST_AID && uses) {
            close();
            crop = named.get();
            topic = Topic.CROP;
            under = text;
        } else if (startsAnew(row) && Prose.isShout(text)) {
            close();
            under = text;
        } else {
            run.add(row);
        }
        return at + 1;
    }

    /** What a table says in words beside its values holds for the crops of its row. */
    private void remarks(Grid grid) {
        if (grid.topic() == Topic.ROTATION) {
            return;
        }
        int crops = grid.column(Column.CROP);
        for (List<Passage> record : grid.records()) {
            String named = crops < 0
                    ? grid.crop()
                    : CropWords.in(record.get(crops).text()).isPresent()
                            ? record.get(crops).text()
                            : grid.crop();
            for (int i = 0; i < record.size(); i++) {
                if (grid.columns().get(i) == Column.OTHER
                        && REMARK.matcher(record.get(i).text()).matches()) {
                    for (Passage each : Prose.sentences(record.get(i))) {
                        sentences.add(new Sentence(each, topic, named, grid.caption()));
                    }
                }
            }
        }
    }

    /** The headings of a table of contents are none. */
    private int skipIndex(List<Row> rows, int at) {
        int end = at + 1;
        while (end < rows.size()
                && rows.get(end).page() == rows.get(at).page()
                && INDEX_LINE.matcher(rows.get(end).text()).matches()) {
            end++;
        }
        rows.subList(at, end).forEach(row -> lines.add(new Line(row, topic)));
        return end;
    }

    /** A heading of a narrow column: "STORAGE AND" over "DISPOSAL". */
    private static Optional<Topic> overTwoLines(List<Row> rows, int at) {
        if (at + 1 >= rows.size()) {
            return Optional.empty();
        }
        Row row = rows.get(at);
        Row next = rows.get(at + 1);
        boolean plain = row.cells().size() == 1
                && next.cells().size() == 1
                && row.page() == next.page()
                && next.top() > row.top()
                && next.top() - row.top() < 2 * (row.bottom() - row.top())
                && next.text().length() <= LONGEST_SECOND
                && row.text().equals(row.text().toUpperCase(java.util.Locale.ROOT))
                        == next.text().equals(next.text().toUpperCase(java.util.Locale.ROOT));
        if (!plain
                || Topics.of(row.text()).isPresent()
                || Topics.of(next.text()).isPresent()) {
            return Optional.empty();
        }
        return Topics.of(row.text() + " " + next.text());
    }

    /** Whether a line can be a heading: the one before it had come to its end. */
    private boolean startsAnew(Row row) {
        if (row.cells().size() > 2 || run.isEmpty()) {
            return run.isEmpty() || row.cells().size() <= 2;
        }
        Row above = run.get(run.size() - 1);
        boolean gap = row.page() == above.page() && row.top() - above.top() > 1.45 * (above.bottom() - above.top());
        boolean shouts = Prose.isShout(row.text()) && !Prose.isShout(above.text());
        return lineByLine || gap || shouts || ENDED.matcher(above.text()).matches();
    }

    private void close() {
        if (run.isEmpty()) {
            return;
        }
        for (Passage paragraph : Prose.paragraphs(run, lineByLine)) {
            String named = topic == Topic.ROTATION
                    ? crop
                    : CropWords.runIn(paragraph.text()).orElse(crop);
            for (Passage each : Prose.sentences(paragraph)) {
                sentences.add(new Sentence(each, topic, named, under));
                if (LEADS_IN.matcher(each.text()).matches()) {
                    under = each.text();
                }
            }
        }
        run.clear();
    }
}
