package plumbrow.documents.label.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;

/**
 * How the product is stored, what is left of it disposed of, and its container handled, each under its own words: in a line of
 * their own, at the head of a paragraph or in the left column of a table.
 */
final class StoragePart implements Part {
    private static final String ONE =
            "(?:(?:pest\\p{L}{3,6}|product|container|general)\\s+)?(?:storage|disposal|handling)";
    private static final Pattern ALONE = Pattern.compile(
            "(?i)\\W{0,3}(?<lead>" + ONE + "(?:\\s?(?:,|and|&|/)+\\s?(?:and\\s)?" + ONE
                    + "){0,3}|pest\\p{L}{3,6}\\s+and\\s+container\\s+handling|(?:pest\\p{L}{3,6}|container))\\s?[:.]?\\s*");
    private static final Pattern RUN_IN = Pattern.compile("^\\W{0,3}(?<lead>(?i:" + ONE
            + "(?:\\s?(?:,|and|&|/)+\\s?(?:and\\s)?" + ONE + "){0,3}))(?:\\s?[:–—]\\s*|\\s(?=\\p{Lu}\\p{Ll}))(?=\\S)");
    private static final Pattern WHOLE =
            Pattern.compile("(?i)(?:storage,? (?:and|&) disposal|storage, .* disposal)\\W*");
    private static final Pattern ENDED = Pattern.compile(".*[.!)]", Pattern.DOTALL);
    private static final Pattern NO_TEXT =
            Pattern.compile("(?i).*\\b(?:warrant|distributed by|questions or comments)\\b.*");
    private static final Pattern COMPLETE = Pattern.compile("(?i)\\b(?:storage|disposal|handling)\\b");
    private static final double NARROW = 6;
    private static final double SAME_TYPE = .12;
    private static final Pattern RUNNING = Pattern.compile("\\p{L}+,?\\s\\p{Ll}.*", Pattern.DOTALL);

    @Override
    public void read(LabelText label, Readings readings) {
        new Pass(readings).read(label.lines());
    }

    private static final class Pass {
        private final Readings readings;
        private @Nullable String lead;
        private boolean table;
        private double height;
        private Passage.Builder text = new Passage.Builder();

        Pass(Readings readings) {
            this.readings = readings;
        }

        void read(List<LabelText.Line> lines) {
            int page = 0;
            double top = 0;
            for (LabelText.Line line : lines) {
                if (line.topic() != Topic.STORAGE) {
                    close();
                    continue;
                }
                Row row = line.row();
                boolean jumped = row.page() != page || row.top() < top;
                if (jumped && lead != null && ended() && !goesOn(row)) {
                    close();
                }
                page = row.page();
                top = row.top();
                height = row.bottom() - row.top();
                row(row);
            }
            close();
        }

        /** Whether the top of a column or page goes on with the text: in the same type, and running text. */
        private boolean goesOn(Row row) {
            double other = row.bottom() - row.top();
            return row.cells().size() == 1
                    && Math.abs(other - height) < SAME_TYPE * height
                    && RUNNING.matcher(row.text()).matches();
        }

        private void row(Row row) {
            Cell first = row.first();
            Matcher label = ALONE.matcher(first.text());
            if (row.cells().size() > 1 && label.matches()) {
                if (lead == null
                        || !table
                        || !label.group("lead").equals(label.group("lead").toUpperCase(Locale.ROOT))) {
                    open(label.group("lead"));
                } else {
                    lead = both(label.group("lead"));
                }
                table = true;
                row.cells().stream().skip(1).forEach(cell -> text.cell(Passage.of(row.page(), cell)));
                text.endLine();
                return;
            }
            Passage passage = Passage.of(row);
            Matcher alone = ALONE.matcher(passage.text());
            if (WHOLE.matcher(passage.text()).matches()) {
                close();
                return;
            }
            if (alone.matches()) {
                if (lead != null && (text.isEmpty() || (table && kind(lead).isEmpty()) || (table && !complete(lead)))) {
                    lead = lead + " " + alone.group("lead");
                } else {
                    open(alone.group("lead"));
                }
                return;
            }
            runIns(passage);
        }

        /** A second line of a label in the left column; or the label of the next row. */
        private String both(String next) {
            if (complete(String.valueOf(lead))) {
                open(next);
                return next;
            }
            return lead + " " + next;
        }

        private static boolean complete(String lead) {
            return COMPLETE.matcher(lead).find();
        }

        /** Leads within a line: "pets. Disposal: If empty …". */
        private void runIns(Passage passage) {
            Passage rest = passage;
            Matcher inside = INSIDE.matcher(rest.text());
            while (!rest.isEmpty()) {
                Matcher start = RUN_IN.matcher(rest.text());
                if (start.find()) {
                    open(start.group("lead"));
                    rest = rest.from(start.end());
                    inside = INSIDE.matcher(rest.text());
                    continue;
                }
                if (inside.find()) {
                    add(rest.part(0, inside.start("lead")));
                    rest = rest.from(inside.start("lead"));
                    inside = INSIDE.matcher(rest.text());
                    if (!RUN_IN.matcher(rest.text()).find()) {
                        add(rest);
                        break;
                    }
                    continue;
                }
                add(rest);
                break;
            }
            text.endLine();
        }

        private void add(Passage part) {
            if (lead != null && !part.isEmpty()) {
                text.line(part);
            }
        }

        private void open(String words) {
            close();
            lead = words;
        }

        private boolean ended() {
            return !text.isEmpty() && ENDED.matcher(text.build().text().strip()).matches();
        }

        private void close() {
            Optional<LabelKind> kind = lead == null ? Optional.empty() : kind(lead);
            if (kind.isPresent() && !text.isEmpty()) {
                Passage passage = text.build();
                String words = passage.text()
                        .replaceAll("(?:^|(?<=\\s))[•·▪■●](?=\\s|$)", " ")
                        .replaceAll("\\s+", " ")
                        .strip();
                if (words.length() < NARROW
                        || NO_TEXT.matcher(words).matches()
                        || AidSentences.SPANISH.matcher(words).find()) {
                    readings.unclear(kind.get(), "other matter seems to stand among it", passage.quote());
                } else if (ENDED.matcher(words).matches()) {
                    readings.text(kind.get(), words, passage.quote());
                } else {
                    readings.unclear(kind.get(), "it seems to go on elsewhere", passage.quote());
                }
            }
            lead = null;
            table = false;
            text = new Passage.Builder();
        }
    }

    private static final Pattern INSIDE = Pattern.compile(
            "(?<=[.!)]\\s)(?<lead>(?:(?:[Pp]esticide|[Cc]ontainer|[Pp]roduct|PESTICIDE|CONTAINER)\\s)?(?:[Ss]torage|[Dd]isposal|[Hh]andling|STORAGE|DISPOSAL|HANDLING)(?:\\s(?:and|&|AND)\\s(?:[Cc]ontainer|CONTAINER)\\s(?:[Hh]andling|[Dd]isposal|HANDLING|DISPOSAL))?):");

    private static Optional<LabelKind> kind(String lead) {
        String words = lead.toLowerCase(Locale.ROOT);
        if (words.contains("container")) {
            return Optional.of(LabelKind.CONTAINER);
        }
        if (words.contains("disposal")) {
            return Optional.of(LabelKind.DISPOSAL);
        }
        return words.contains("storage") ? Optional.of(LabelKind.STORAGE) : Optional.empty();
    }
}
