package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Puts letters together to words, words to cells and cells to rows.
 *
 * Letters within 0.45 of the size of their font stand on the same line, so that a raised exponent stays in it. A gap of more
 * than 0.15 of the size parts words; one of more than 1.1 sizes and 2.6 blanks parts cells, and so do dotted leaders and
 * drawn bars.
 */
final class Lines {
    private static final double SAME_LINE = .45;
    private static final double WORD_GAP = .15;
    private static final double CELL_GAP = 1.1;
    private static final double CELL_BLANKS = 2.6;
    private static final double DOUBLED = .3;
    private static final Pattern LEADER = Pattern.compile("[.·…_]{4,}|\\|+|…+");

    private Lines() {}

    static List<Row> rows(int page, List<Glyph> glyphs) {
        List<Row> rows = new ArrayList<>();
        for (List<Glyph> line : lines(glyphs)) {
            List<Cell> cells = cells(words(line));
            if (!cells.isEmpty()) {
                rows.add(new Row(page, cells));
            }
        }
        return rows;
    }

    private static List<List<Glyph>> lines(List<Glyph> glyphs) {
        List<Glyph> sorted = Exponents.lowered(glyphs);
        sorted.sort(Comparator.comparingDouble(Glyph::baseline));
        List<List<Glyph>> lines = new ArrayList<>();
        List<Glyph> line = new ArrayList<>();
        Glyph lead = null;
        for (Glyph glyph : sorted) {
            if (lead != null && glyph.baseline() - lead.baseline() > SAME_LINE * Math.max(lead.size(), glyph.size())) {
                lines.add(line);
                line = new ArrayList<>();
                lead = null;
            }
            line.add(glyph);
            lead = lead == null || glyph.size() > lead.size() ? glyph : lead;
        }
        lines.add(line);
        return lines;
    }

    /** A word, how far the next may stand off and still be in its cell. */
    private record Spaced(Word word, double reach) {}

    private static List<Spaced> words(List<Glyph> line) {
        line.sort(Comparator.comparingDouble(Glyph::left));
        List<Spaced> words = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        Box box = null;
        Glyph before = null;
        for (Glyph glyph : line) {
            if (before != null && doubled(before, glyph)) {
                continue;
            }
            boolean apart = before != null && glyph.left() - before.right() > WORD_GAP * glyph.size();
            if (box != null && before != null && (apart || glyph.isBlank())) {
                words.add(new Spaced(new Word(text.toString(), box), reach(before)));
                text.setLength(0);
                box = null;
            }
            if (!glyph.isBlank()) {
                text.append(glyph.text().strip());
                box = box == null ? glyph.box() : box.around(glyph.box());
                before = glyph;
            }
        }
        if (box != null && before != null) {
            words.add(new Spaced(new Word(text.toString(), box), reach(before)));
        }
        return words;
    }

    private static double reach(Glyph glyph) {
        return Math.max(CELL_GAP * glyph.size(), CELL_BLANKS * Math.min(glyph.blank(), glyph.size()));
    }

    /** Bold made by printing twice. */
    private static boolean doubled(Glyph before, Glyph glyph) {
        return glyph.text().equals(before.text())
                && glyph.left() - before.left() < DOUBLED * (before.right() - before.left());
    }

    private static List<Cell> cells(List<Spaced> words) {
        List<Cell> cells = new ArrayList<>();
        List<Word> cell = new ArrayList<>();
        double end = 0;
        for (Spaced spaced : words) {
            Word word = spaced.word;
            boolean leader = LEADER.matcher(word.text()).matches();
            if (!cell.isEmpty() && (leader || word.box().left() > end)) {
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
