package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Plain text as paper: each letter stands on a grid, a form feed begins a page.
 *
 * Two blanks or a tab part cells, unless a sentence ended before them; so do bars and dotted leaders.
 */
final class TextPaper {
    private static final double ACROSS = 6;
    private static final double DOWN = 12;
    private static final int TAB = 8;
    private static final Pattern WORD = Pattern.compile("[^\\s]+");
    private static final Pattern LEADER = Pattern.compile("\\.{4,}|_{4,}|…+");
    private static final Pattern RULE = Pattern.compile("[-=_*+|\\s]{4,}");

    private TextPaper() {}

    static Paper read(String text, Predicate<String> landmark) {
        List<Leaf> leaves = new ArrayList<>();
        for (String page : text.split("\f", -1)) {
            List<Row> rows = new ArrayList<>();
            String[] lines = page.split("\\R", -1);
            int widest = 0;
            for (int i = 0; i < lines.length; i++) {
                String line =
                        LEADER.matcher(spread(lines[i])).replaceAll(dots -> " ".repeat(dots.end() - dots.start()));
                widest = Math.max(widest, line.length());
                List<Cell> cells = RULE.matcher(line).matches() ? List.of() : cells(line, i);
                if (!cells.isEmpty()) {
                    rows.add(new Row(leaves.size() + 1, cells));
                }
            }
            leaves.add(new Leaf(widest * ACROSS, lines.length * DOWN, rows));
        }
        return Leaf.bind(Paper.Kind.TEXT, leaves, List.of(), landmark);
    }

    private static String spread(String line) {
        if (line.indexOf('\t') < 0) {
            return line;
        }
        StringBuilder spread = new StringBuilder();
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            if (letter == '\t') {
                spread.append(" ".repeat(Math.max(2, TAB - spread.length() % TAB)));
            } else {
                spread.append(letter);
            }
        }
        return spread.toString();
    }

    private static List<Cell> cells(String line, int number) {
        List<Cell> cells = new ArrayList<>();
        List<Word> cell = new ArrayList<>();
        int end = -1;
        Matcher words = WORD.matcher(line);
        while (words.find()) {
            boolean bar = words.group().chars().allMatch(letter -> letter == '|');
            boolean sentence = end > 0 && ".!?".indexOf(line.charAt(end - 1)) >= 0;
            boolean apart = end >= 0 && words.start() - end >= (sentence ? 4 : 2);
            if (!cell.isEmpty() && (bar || apart)) {
                cells.add(new Cell(cell));
                cell = new ArrayList<>();
            }
            if (!bar) {
                Box box =
                        new Box(words.start() * ACROSS, number * DOWN + 2, words.end() * ACROSS, number * DOWN + DOWN);
                cell.add(new Word(words.group(), box));
            }
            end = words.end();
        }
        if (!cell.isEmpty()) {
            cells.add(new Cell(cell));
        }
        return cells;
    }
}
