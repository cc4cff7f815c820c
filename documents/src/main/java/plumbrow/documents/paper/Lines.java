package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Puts letters together to words, words to cells and cells to rows.
 *
 * Letters whose baselines lie within 0.12 of their size make a strip; strips within 0.45 make a row, unless they would stand
 * on one another: beside a column of small print lies another whose lines fall between, and letters of two lines must never
 * interleave. A gap of more than 0.15 of the size parts words; so does a blank with letters on either side of it, but not
 * one that lies on a letter. A gap of more than 1.1 sizes and 2.6 blanks parts cells, and so do dotted leaders and drawn bars,
 * and the edge of a column, however near the one beside it ends.
 */
final class Lines {
    private static final double SAME_STRIP = .12;
    private static final double SAME_LINE = .45;
    private static final double WORD_GAP = .15;
    private static final double CELL_GAP = 1.1;
    private static final double CELL_BLANKS = 2.6;
    private static final double DOUBLED = .3;
    private static final double DOUBLED_SIZE = .15;
    private static final double SLIGHT = .1;
    /** Share of a letter that must lie on another for one of them to belong to another line. */
    private static final double ON = .4;
    /** A letter set smaller than this share of its neighbour is a raised mark. */
    private static final double RAISED = .9;
    /** Letters this many times as large stand in a line of their own, as a name beside small print, unless on one baseline. */
    private static final double OTHER_SIZE = 1.8;

    /** How much of a size two words may share, where faces overhang. */
    private static final double OVERHANG = .35;

    private static final Pattern LEADER = Pattern.compile("[.·…_]{4,}|\\|+|…+");

    private static final Pattern LEADER_WITHIN = Pattern.compile("[.·…_]{4,}");

    private Lines() {}

    static List<Row> rows(int page, List<Glyph> glyphs) {
        List<Line> lines = new ArrayList<>();
        List<Glyph> lowered = Exponents.lowered(glyphs);
        Set<Glyph> edges = Edges.of(lowered);
        for (List<Glyph> strip : strips(lowered)) {
            for (List<Glyph> lane : lanes(Run.of(strip))) {
                List<Spaced> words = words(lane, edges);
                if (!words.isEmpty()) {
                    place(new Line(lane.get(0).baseline(), sizeOf(lane), words), lines);
                }
            }
        }
        lines.removeIf(line -> line.isLostColon(lines));
        lines.sort(Comparator.comparingDouble(Line::baseline));
        List<Row> rows = new ArrayList<>();
        for (Line line : lines) {
            List<Cell> cells = cells(line.words);
            if (!cells.isEmpty()) {
                rows.add(new Row(page, cells));
            }
        }
        return rows;
    }

    /** Letters that the file sets one after the other. */
    private record Run(List<Glyph> glyphs) {

        /** The runs of a strip whose letters stand in the order of the file. */
        static List<Run> of(List<Glyph> strip) {
            List<Run> runs = new ArrayList<>();
            List<Glyph> run = new ArrayList<>();
            Glyph before = null;
            for (Glyph glyph : strip) {
                if (before != null
                        && (glyph.left() < before.left() - SLIGHT * glyph.size()
                                || glyph.left() > before.right() + CELL_GAP * glyph.size())) {
                    add(run, runs);
                    run = new ArrayList<>();
                }
                run.add(glyph);
                before = glyph;
            }
            add(run, runs);
            return runs;
        }

        private static void add(List<Glyph> run, List<Run> runs) {
            if (run.stream().anyMatch(glyph -> !glyph.isBlank())) {
                runs.add(new Run(run));
            }
        }

        /** Where its first letter begins. */
        double left() {
            return glyphs.stream()
                    .filter(glyph -> !glyph.isBlank())
                    .findFirst()
                    .orElseThrow()
                    .left();
        }

        /** Whether a letter of one stands on a letter of the other. */
        boolean among(Run other) {
            for (int i = 0; i < glyphs.size(); i++) {
                for (int j = 0; j < other.glyphs.size(); j++) {
                    if (!glyphs.get(i).isBlank() && !other.glyphs.get(j).isBlank() && on(i, other, j)) {
                        return true;
                    }
                }
            }
            return false;
        }

        private boolean on(int i, Run other, int j) {
            Glyph one = glyphs.get(i);
            Glyph two = other.glyphs.get(j);
            double shared = Math.min(right(i), other.right(j)) - Math.max(one.left(), two.left());
            return shared > ON * Math.min(right(i) - one.left(), other.right(j) - two.left());
        }

        /** Where a letter ends, at the latest where the next begins: a font may state its letters wider than they are set. */
        private double right(int i) {
            Glyph glyph = glyphs.get(i);
            return i + 1 < glyphs.size() && glyphs.get(i + 1).left() > glyph.left()
                    ? Math.min(glyph.right(), glyphs.get(i + 1).left())
                    : glyph.right();
        }
    }

    /** Runs side by side; one that would stand among the letters of another gets a lane of its own. */
    private static List<List<Glyph>> lanes(List<Run> runs) {
        List<Run> sorted = new ArrayList<>(runs);
        sorted.sort(Comparator.comparingDouble(Run::left));
        List<List<Run>> lanes = new ArrayList<>();
        for (Run run : sorted) {
            List<Run> free = null;
            for (List<Run> lane : lanes) {
                if (free == null && lane.stream().noneMatch(run::among)) {
                    free = lane;
                }
            }
            if (free == null) {
                free = new ArrayList<>();
                lanes.add(free);
            }
            free.add(run);
        }
        return lanes.stream()
                .map(lane -> (List<Glyph>) new ArrayList<>(
                        lane.stream().flatMap(run -> run.glyphs.stream()).toList()))
                .toList();
    }

    /** Words on one baseline, from left to right. */
    private record Line(double baseline, double size, List<Spaced> words) {

        boolean takes(Line other) {
            boolean ofOneSize = Math.max(size, other.size) < OTHER_SIZE * Math.min(size, other.size);
            double measure = ofOneSize ? Math.max(size, other.size) : Math.min(size, other.size);
            return Math.abs(other.baseline - baseline) <= SAME_LINE * measure
                    && words.stream().noneMatch(one -> other.words.stream().anyMatch(two -> one.over(two)));
        }

        /** A colon of its own under or over a word: the label's, where the value was set on it. */
        boolean isLostColon(List<Line> lines) {
            return words.size() == 1
                    && words.get(0).isColon()
                    && lines.stream()
                            .filter(other -> Math.abs(other.baseline - baseline) < SAME_LINE * size)
                            .flatMap(other -> other.words.stream())
                            .anyMatch(word -> !word.isColon() && word.covers(words.get(0)));
        }

        /** The same text at nearly the same place: bold or a shadow made by printing twice. */
        boolean repeats(Line other) {
            return words.size() == other.words.size()
                    && Math.abs(other.baseline - baseline) <= SAME_LINE * size
                    && IntStream.range(0, words.size())
                            .allMatch(i -> words.get(i).repeats(other.words.get(i)));
        }

        Line with(Line other) {
            List<Spaced> all = new ArrayList<>(words);
            all.addAll(other.words);
            all.sort(Comparator.comparingDouble(each -> each.word.box().left()));
            Line lead = other.size > size ? other : this;
            return new Line(lead.baseline, lead.size, joined(all));
        }

        /** A raised mark belongs to the word that it touches. */
        private static List<Spaced> joined(List<Spaced> words) {
            List<Spaced> joined = new ArrayList<>();
            for (Spaced word : words) {
                Spaced last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
                if (last != null && last.touches(word)) {
                    joined.set(joined.size() - 1, last.and(word));
                } else {
                    joined.add(word);
                }
            }
            return joined;
        }
    }

    private static void place(Line line, List<Line> lines) {
        for (int i = lines.size() - 1; i >= 0 && near(line, lines.get(i)); i--) {
            if (lines.get(i).repeats(line)) {
                return;
            }
            if (lines.get(i).takes(line)) {
                lines.set(i, lines.get(i).with(line));
                return;
            }
        }
        lines.add(line);
    }

    /** Strips come from top to bottom: no line far above can take another. */
    private static boolean near(Line line, Line above) {
        return line.baseline - above.baseline <= 2 * Math.max(line.size, above.size);
    }

    private static double sizeOf(List<Glyph> strip) {
        return strip.stream().mapToDouble(Glyph::size).max().orElse(1);
    }

    /** Letters on one baseline, in the order of the file. */
    private static List<List<Glyph>> strips(List<Glyph> glyphs) {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, glyphs.size()).boxed().toList());
        order.sort(Comparator.comparingDouble(i -> glyphs.get(i).baseline()));
        List<List<Glyph>> strips = new ArrayList<>();
        List<Integer> strip = new ArrayList<>();
        for (int i : order) {
            if (!strip.isEmpty() && below(glyphs.get(i), glyphs.get(strip.get(0)))) {
                strips.add(inFileOrder(strip, glyphs));
                strip = new ArrayList<>();
            }
            strip.add(i);
        }
        if (!strip.isEmpty()) {
            strips.add(inFileOrder(strip, glyphs));
        }
        return strips;
    }

    private static boolean below(Glyph glyph, Glyph first) {
        return glyph.baseline() - first.baseline() > SAME_STRIP * Math.min(first.size(), glyph.size());
    }

    private static List<Glyph> inFileOrder(List<Integer> strip, List<Glyph> glyphs) {
        return strip.stream().sorted().map(glyphs::get).toList();
    }

    /** A word, how far the next may stand off and still be in its cell, and whether it begins at the edge of a column. */
    private record Spaced(Word word, double reach, double size, boolean atEdge) {

        boolean isColon() {
            return word.text().equals(":");
        }

        boolean covers(Spaced other) {
            return word.box().left() <= other.word.box().left()
                    && word.box().right() >= other.word.box().right();
        }

        boolean repeats(Spaced other) {
            return word.text().equals(other.word.text())
                    && Math.abs(word.box().left() - other.word.box().left()) <= SAME_LINE * size;
        }

        boolean touches(Spaced next) {
            return next.word.box().left() - word.box().right() < WORD_GAP * Math.min(size, next.size)
                    && Math.min(size, next.size) < RAISED * Math.max(size, next.size);
        }

        Spaced and(Spaced next) {
            return new Spaced(
                    new Word(word.text() + next.word.text(), word.box().around(next.word.box())),
                    next.reach,
                    size,
                    atEdge);
        }

        boolean over(Spaced other) {
            double shared = Math.min(word.box().right(), other.word.box().right())
                    - Math.max(word.box().left(), other.word.box().left());
            return shared > OVERHANG * Math.min(size, other.size);
        }
    }

    private static List<Spaced> words(List<Glyph> line, Set<Glyph> edges) {
        line.sort(Comparator.comparingDouble(Glyph::left));
        List<Spaced> words = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        Box box = null;
        Glyph before = null;
        Glyph blank = null;
        boolean atEdge = false;
        for (Glyph glyph : line) {
            if (glyph.isBlank()) {
                blank = glyph;
                continue;
            }
            if (before != null && doubled(before, glyph)) {
                continue;
            }
            boolean apart = before != null
                    && (glyph.left() - before.right() > WORD_GAP * glyph.size()
                            || (blank != null && between(before, blank, glyph)));
            if (box != null && before != null && apart) {
                words.add(spaced(text, box, before, atEdge));
                text.setLength(0);
                box = null;
            }
            atEdge = box == null ? edges.contains(glyph) : atEdge;
            text.append(glyph.text().strip());
            box = box == null ? glyph.box() : box.around(glyph.box());
            before = glyph;
            blank = null;
        }
        if (box != null && before != null) {
            words.add(spaced(text, box, before, atEdge));
        }
        return words;
    }

    private static Spaced spaced(StringBuilder text, Box box, Glyph last, boolean atEdge) {
        return new Spaced(new Word(text.toString(), box), reach(last), last.size(), atEdge);
    }

    /**
     * Whether a blank parts two letters: neither may lie on more than half of it. Where a font states its letters wider than
     * they are set, so that they lie on one another, only where they begin counts.
     */
    private static boolean between(Glyph before, Glyph blank, Glyph after) {
        double slight = SLIGHT * after.size();
        if (after.left() < before.right() - slight) {
            return blank.left() > before.left() + slight && after.left() > blank.left() + slight;
        }
        double half = (blank.left() + blank.right()) / 2;
        return before.right() <= half && after.left() >= half;
    }

    private static double reach(Glyph glyph) {
        return Math.max(CELL_GAP * glyph.size(), CELL_BLANKS * Math.min(glyph.blank(), glyph.size()));
    }

    /** Bold made by printing twice. */
    private static boolean doubled(Glyph before, Glyph glyph) {
        double most = Math.min(DOUBLED * (before.right() - before.left()), DOUBLED_SIZE * glyph.size());
        return glyph.text().equals(before.text()) && glyph.left() - before.left() < most;
    }

    /** Dots that lead from a name to its number without a blank part them all the same. */
    private static List<Spaced> parted(Spaced spaced) {
        String text = spaced.word.text();
        Matcher dots = LEADER_WITHIN.matcher(text);
        List<Spaced> parts = new ArrayList<>();
        int from = 0;
        while (dots.find()) {
            part(spaced, from, dots.start(), parts);
            part(spaced, dots.start(), dots.end(), parts);
            from = dots.end();
        }
        part(spaced, from, text.length(), parts);
        return parts;
    }

    private static void part(Spaced whole, int from, int to, List<Spaced> parts) {
        if (from < to) {
            Box box = whole.word.box();
            double each = box.width() / whole.word.text().length();
            Box own = new Box(box.left() + from * each, box.top(), box.left() + to * each, box.bottom());
            parts.add(new Spaced(
                    new Word(whole.word.text().substring(from, to), own),
                    whole.reach,
                    whole.size,
                    whole.atEdge && from == 0));
        }
    }

    private static List<Cell> cells(List<Spaced> words) {
        List<Cell> cells = new ArrayList<>();
        List<Word> cell = new ArrayList<>();
        double end = 0;
        for (Spaced spaced :
                words.stream().flatMap(each -> parted(each).stream()).toList()) {
            Word word = spaced.word;
            boolean leader = LEADER.matcher(word.text()).matches();
            if (!cell.isEmpty() && (leader || spaced.atEdge || word.box().left() > end)) {
                cells.add(new Cell(cell));
                cell = new ArrayList<>();
            }
            if (!leader) {
                cell.add(word);
                end = word.box().right() + spaced.reach;
            }
        }
        if (!cell.isEmpty()) {
            cells.add(new Cell(cell));
        }
        return cells;
    }
}
