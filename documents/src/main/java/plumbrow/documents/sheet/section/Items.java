package plumbrow.documents.sheet.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.paper.Word;

/**
 * Reads rows as labels with their values: on one line, beside each other in a table, or below each other; with either side
 * running over several lines.
 */
public final class Items {
    private static final double SAME_LEFT = 7;
    private static final double BELOW = 2;
    private static final double APART = 40;
    private static final Pattern OPEN_SENTENCE = Pattern.compile("[\\p{L}\\d,;)]\\s*$");

    /** A label that isn't known still ends the value before it. */
    private static final Pattern ANY_LABEL = Pattern.compile(
            "^(?:[•·▪■●‣*]\\s*)?(?:\\d{1,2}\\.\\d{1,2}\\.?\\s+)?[\\p{Lu}][^:\\t.;]{1,60}?\\s?:(?=\\s|$)");

    private static final Pattern SUBSECTION = Pattern.compile("\\d{1,2}\\.\\d{1,2}(?:\\.\\d{1,2})?\\.?");
    private static final Pattern SUBHEADING = Pattern.compile("^\\d{1,2}\\.\\d{1,2}\\.?\\s+\\p{Lu}.{0,90}$");
    private static final Pattern NEXT_LABEL = Pattern.compile("[;.,]\\s+");
    private static final Pattern SMALL_START = Pattern.compile("(?!pH\\b|n-)\\p{Ll}");
    private static final Pattern CONTINUES = Pattern.compile("^[\\p{Ll}(/].*");

    private final List<Item> items = new ArrayList<>();
    private @Nullable Draft draft;

    /** An item being put together. */
    private static final class Draft {
        final Optional<Label> label;
        final Passage.Builder head = new Passage.Builder();
        final Passage.Builder value = new Passage.Builder();
        final double left;
        double valueLeft = Double.NaN;
        boolean ownCell;

        Draft(Optional<Label> label, double left) {
            this.label = label;
            this.left = left;
        }

        boolean isTable() {
            return ownCell && !Double.isNaN(valueLeft);
        }
    }

    private Items() {}

    public static List<Item> of(List<Row> rows) {
        Items items = new Items();
        List<Row> straight = Centred.straightened(rows);
        for (int i = 0; i < straight.size(); i++) {
            List<Row> pairs = i + 1 < straight.size() ? labelsAbove(straight.get(i), straight.get(i + 1)) : List.of();
            if (pairs.isEmpty()) {
                items.row(straight.get(i));
            } else {
                pairs.forEach(items::row);
                i++;
            }
        }
        items.close();
        return items.items;
    }

    /** Labels beside each other with their values below them: pairs, each as a row; none where it isn't so. */
    private static List<Row> labelsAbove(Row above, Row below) {
        List<Cell> labels = above.cells();
        long known = labels.stream()
                .filter(cell -> Labels.at(cell.text(), false)
                        .filter(hit -> !hit.colon() && hit.end() >= cell.text().length())
                        .isPresent())
                .count();
        boolean beneath = above.page() == below.page()
                && below.top() - above.top() < BELOW * (above.bottom() - above.top())
                && below.cells().size() > 1
                && Labels.at(below.first().text(), false).isEmpty();
        if (labels.size() < 2 || known < labels.size() - 1 || known < 2 || !beneath) {
            return List.of();
        }
        List<Row> pairs = new ArrayList<>();
        for (Cell label : labels) {
            below.cells().stream()
                    .filter(value -> value.left() < label.right() && value.right() > label.left() - SAME_LEFT)
                    .findFirst()
                    .ifPresent(value -> pairs.add(new Row(below.page(), List.of(label, value))));
        }
        return pairs.size() == below.cells().size() ? pairs : List.of();
    }

    private void row(Row row) {
        List<Cell> cells = numberJoined(row.cells());
        for (int i = 0; i < cells.size(); i++) {
            boolean last = i == cells.size() - 1;
            cell(row, cells.get(i), i, last);
        }
        if (draft != null) {
            draft.head.endLine();
            draft.value.endLine();
        }
    }

    /** The number of a subsection is no cell of its own: "4.2 | Most important symptoms". */
    private static List<Cell> numberJoined(List<Cell> cells) {
        if (cells.size() < 2 || !SUBSECTION.matcher(cells.get(0).text()).matches()) {
            return cells;
        }
        List<Word> words = new ArrayList<>(cells.get(0).words());
        words.addAll(cells.get(1).words());
        List<Cell> joined = new ArrayList<>(List.of(new Cell(words)));
        joined.addAll(cells.subList(2, cells.size()));
        return joined;
    }

    private void cell(Row row, Cell cell, int at, boolean last) {
        Passage passage = Passage.of(row.page(), cell);
        String text = passage.text();
        boolean first = at == 0;
        Optional<Labels.Hit> hit = Labels.at(text, first && !last);
        if (hit.isPresent()
                && hit.get().label() != Label.PARTITION
                && (goesOn(row, cell, text, first) || underValue(hit.get(), row, cell))) {
            hit = Optional.empty();
        }
        if (hit.isPresent() && opens(hit.get(), text, at, last, row) && !wraps(hit.get(), cell, text)) {
            open(
                    Optional.of(hit.get().label()),
                    passage,
                    hit.get().end(),
                    cell,
                    first && hit.get().end() >= text.length());
            return;
        }
        if (first) {
            Matcher any = ANY_LABEL.matcher(text);
            if (any.find()) {
                open(Optional.empty(), passage, any.end(), cell, any.end() >= text.length());
                return;
            }
            if (draft == null || beginsAnother(row, cell, text)) {
                boolean ownCell = row.cells().size() > 1;
                open(
                        Optional.empty(),
                        passage,
                        ownCell || SUBHEADING.matcher(text).matches() ? text.length() : 0,
                        cell,
                        ownCell);
                return;
            }
            if (draft.isTable() && Math.abs(cell.left() - draft.left) <= SAME_LEFT) {
                draft.head.line(passage);
                return;
            }
        }
        add(passage, cell, first);
    }

    /** A line below a value, with nothing beside it, is more of the value though its words may be a label's. */
    private boolean underValue(Labels.Hit hit, Row row, Cell cell) {
        Draft before = draft;
        return before != null
                && before.isTable()
                && !hit.colon()
                && row.cells().size() == 1
                && Math.abs(cell.left() - before.valueLeft) <= SAME_LEFT
                && Math.abs(cell.left() - before.left) > APART;
    }

    /**
     * A line in small letters is more of the value above it, or of the label: "In case of skin / contact". A pH has a small letter
     * and a label of its own.
     */
    private boolean goesOn(Row row, Cell cell, String text, boolean first) {
        Draft before = draft;
        if (!first
                || before == null
                || !before.isTable()
                || !SMALL_START.matcher(text).lookingAt()) {
            return false;
        }
        boolean underLabel = Math.abs(cell.left() - before.left) <= SAME_LEFT;
        boolean valueBeside =
                row.cells().size() > 1 && Math.abs(row.cells().get(1).left() - before.valueLeft) <= SAME_LEFT;
        return underLabel ? valueBeside && before.label.isPresent() : true;
    }

    /** "n-octanol/water" below "Partition coefficient:" is more of the same label. */
    private boolean wraps(Labels.Hit hit, Cell cell, String text) {
        return draft != null
                && draft.isTable()
                && draft.label.isPresent()
                && draft.label.get() == hit.label()
                && CONTINUES.matcher(text).matches()
                && Math.abs(cell.left() - draft.left) <= SAME_LEFT;
    }

    /** In the middle of a row only a label with a colon, or one of several pairs, begins an item. */
    private boolean opens(Labels.Hit hit, String text, int at, boolean last, Row row) {
        if (at == 0) {
            return true;
        }
        if (draft != null && draft.label.isPresent() && draft.label.get() == hit.label() && !hit.colon()) {
            return false;
        }
        boolean pairs = row.cells().size() % 2 == 0 && at % 2 == 0 && !last;
        return (hit.colon() && hit.end() > 2) || (pairs && hit.end() >= text.length());
    }

    /** Whether a row without a known label is one of its own, and not more of the one before. */
    private boolean beginsAnother(Row row, Cell cell, String text) {
        Draft before = draft;
        if (before == null) {
            return true;
        }
        if (SUBHEADING.matcher(text).matches()) {
            return true;
        }
        if (!before.isTable()
                && SMALL_START.matcher(text).lookingAt()
                && OPEN_SENTENCE.matcher(before.value.build().text()).find()) {
            return false;
        }
        boolean below = Math.abs(cell.left() - before.left) <= SAME_LEFT;
        if (!below || !before.isTable()) {
            return row.cells().size() > 1 && below && (before.label.isEmpty() || !before.value.isEmpty());
        }
        return !CONTINUES.matcher(text).matches()
                && !unclosed(before.head.build().text());
    }

    private static boolean unclosed(String text) {
        return text.lastIndexOf('(') > text.lastIndexOf(')')
                || text.endsWith("-")
                || text.endsWith("/")
                || text.endsWith(" and")
                || text.endsWith(",")
                || text.endsWith(" of")
                || text.endsWith(" or");
    }

    private void open(Optional<Label> label, Passage passage, int end, Cell cell, boolean ownCell) {
        close();
        Draft opened = new Draft(label, cell.left());
        opened.ownCell = ownCell;
        opened.head.line(passage.part(0, end));
        draft = opened;
        if (end < passage.text().length()) {
            add(passage.from(end), cell, true);
        }
    }

    /** Adds text to the value, and opens another item where a known label with a colon stands in it. */
    private void add(Passage passage, Cell cell, boolean goesOn) {
        Draft into = draft;
        if (into == null) {
            return;
        }
        if (into.value.isEmpty() && passage.text().startsWith(":")) {
            if (passage.text().length() > 1) {
                add(passage.from(1), cell, goesOn);
            } else if (!goesOn && Double.isNaN(into.valueLeft)) {
                into.valueLeft = cell.left();
            }
            return;
        }
        String text = passage.text();
        Matcher next = NEXT_LABEL.matcher(text);
        while (next.find()) {
            if (Labels.at(text, next.end(), false).isEmpty()) {
                continue;
            }
            Passage rest = passage.from(next.end());
            Optional<Labels.Hit> hit = Labels.at(rest.text(), false);
            if (hit.isPresent() && hit.get().colon() && mayFollow(hit.get().label(), into)) {
                put(into, passage.part(0, next.start() + 1), cell, goesOn);
                open(Optional.of(hit.get().label()), rest, hit.get().end(), cell, false);
                return;
            }
        }
        put(into, passage, cell, goesOn);
    }

    /** "NOTE: do not give anything by mouth" and "IF IN EYES: rinse" are part of the advice they stand in. */
    private static boolean mayFollow(Label label, Draft into) {
        return label != Label.OTHER_TEXT && (into.label.isEmpty() || into.label.get() != label);
    }

    private static void put(Draft into, Passage passage, Cell cell, boolean goesOn) {
        if (!goesOn && Double.isNaN(into.valueLeft)) {
            into.valueLeft = cell.left();
        }
        boolean sameColumn = goesOn || Math.abs(cell.left() - into.valueLeft) <= SAME_LEFT;
        if (sameColumn) {
            into.value.line(passage);
        } else {
            into.value.cell(passage);
        }
    }

    private void close() {
        if (draft != null) {
            Passage head = draft.head.build();
            Optional<Label> label = draft.label.isPresent() || head.isEmpty()
                    ? draft.label
                    : Labels.at(head.text(), true).map(Labels.Hit::label);
            items.add(new Item(label, head, draft.value.build(), draft.isTable()));
        }
        draft = null;
    }
}
