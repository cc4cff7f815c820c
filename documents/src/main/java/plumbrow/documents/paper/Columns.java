package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Tells a page printed in columns from a table, and puts the columns one after the other.
 *
 * Both show a gutter that no cell crosses. It parts columns of text where a landmark, such as the heading of a section,
 * begins right of it on some page; where both sides are running text that fills its column; or where both sides are running
 * text whose lines do not stand beside each other, as in the small print of a label; where small print stands beside a front
 * in large type; or where one side is Spanish and the other isn't. Anything else is a table, and stays row by row. What stands on either side may be parted again: a label has three columns and more, and boxes within them.
 */
final class Columns {
    private static final double SAME_LEFT = 2.5;
    private static final double TOUCHING = .3;
    private static final int FEWEST_ROWS = 4;
    private static final int ENOUGH_PROSE = 8;
    private static final double FULL = .72;
    private static final double MOSTLY = .6;
    private static final double BALANCE = .8;
    private static final double NARROWEST_SHARE = .33;
    private static final double NARROWEST_OF_MANY = .14;
    private static final double MOSTLY_FULL = .5;
    private static final int ENOUGH_TEXT = 20;
    private static final double ASIDE = .2;
    private static final double DENSE = 1.9;
    private static final int FEWEST_WORDS = 3;
    private static final int DEEPEST = 6;
    private static final double MEASURE = .8;
    private static final double INDENT = 14;
    private static final double ACROSS = .7;
    private static final double CROSSING = .08;
    private static final int NARROWEST_GAP = 2;
    /** The number or the bullet of a paragraph, set before it. */
    private static final Pattern OWN_NUMBER = Pattern.compile("\\W{0,2}(?:\\d{1,2}(?:\\.\\d{1,2})*|\\p{L})?\\W{0,2}");

    private static final Pattern FOREIGN = Pattern.compile(
            "(?i)(?<![\\p{L}])(?:de|del|la|las|el|los|que|en|y|con|por|para|una|su|se|al)(?![\\p{L}])|[áéíóúñ¿¡]");

    /** A paper in numbered sections has labels beside values, and no panels. */
    private static final Pattern SECTION = Pattern.compile("(?i)\\W*(?:section\\s*)?\\d{1,2}(?!\\d)");

    private static final int FEWEST_SECTIONS = 6;

    private final Predicate<String> landmark;
    private final boolean sectioned;
    private final List<Double> gutters = new ArrayList<>();

    /** Rows that no cell carries over a gutter, and where the gutter ends. */
    private record Stretch(int from, List<Row> rows, double left) {}

    /**
     * Looks for gutters on all pages, whose rows stand from top to bottom.
     *
     * @param landmark whether a line of text can only begin a column's own matter
     */
    Columns(List<List<Row>> pages, Predicate<String> landmark) {
        this.landmark = landmark;
        this.sectioned = pages.stream()
                        .flatMap(List::stream)
                        .map(Row::text)
                        .filter(text -> SECTION.matcher(text).lookingAt() && landmark.test(text))
                        .distinct()
                        .count()
                >= FEWEST_SECTIONS;
        for (List<Row> page : pages) {
            for (double left : candidates(page, NARROWEST_SHARE)) {
                if (gutters.stream().noneMatch(gutter -> Math.abs(gutter - left) <= SAME_LEFT)
                        && runs(page, left).stream().anyMatch(run -> parts(run.rows, left))) {
                    gutters.add(left);
                }
            }
        }
    }

    /** The page in reading order. */
    List<Row> inOrder(List<Row> page) {
        return inOrder(page, 0);
    }

    private List<Row> inOrder(List<Row> rows, int depth) {
        Stretch longest = depth == DEEPEST ? null : longest(rows);
        if (longest == null) {
            return rows;
        }
        List<Row> lefts = new ArrayList<>();
        List<Row> rights = new ArrayList<>();
        double edge = edge(longest);
        longest.rows.forEach(row -> side(row, edge, false, lefts));
        longest.rows.forEach(row -> side(row, edge, true, rights));
        List<Row> ordered = new ArrayList<>(inOrder(rows.subList(0, longest.from), depth));
        ordered.addAll(inOrder(lefts, depth + 1));
        ordered.addAll(inOrder(rights, depth + 1));
        ordered.addAll(inOrder(rows.subList(longest.from + longest.rows.size(), rows.size()), depth));
        return ordered;
    }

    /** The longest stretch that a gutter parts; null where none does. */
    private @Nullable Stretch longest(List<Row> rows) {
        Stretch longest = null;
        for (double left : candidates(rows, NARROWEST_OF_MANY)) {
            boolean known = gutters.stream().anyMatch(gutter -> Math.abs(gutter - left) <= SAME_LEFT);
            for (Stretch run : runs(rows, left)) {
                boolean longer = longest == null || run.rows.size() > longest.rows.size();
                if (longer && (known || partsSmallPrint(run.rows, left))) {
                    longest = run;
                }
            }
        }
        for (double left : sectioned ? List.<Double>of() : gaps(rows)) {
            for (Stretch run : runs(rows, left, row -> reaches(row, left))) {
                boolean longer = longest == null || run.rows.size() > longest.rows.size();
                if (longer && partsPanels(run.rows, left)) {
                    longest = run;
                }
            }
        }
        return longest;
    }

    /** Where what stands right of an empty strip begins, in each stretch of rows between lines across the page. */
    private static List<Double> gaps(List<Row> rows) {
        double from = rows.stream().mapToDouble(row -> row.first().left()).min().orElse(0);
        double to = rows.stream().mapToDouble(Columns::right).max().orElse(0);
        List<Double> gaps = new ArrayList<>();
        int start = 0;
        for (int i = 0; i <= rows.size(); i++) {
            boolean across = i < rows.size()
                    && rows.get(i).cells().stream().anyMatch(cell -> cell.box().width() > ACROSS * (to - from));
            if (i == rows.size() || across) {
                if (i - start >= ENOUGH_PROSE) {
                    gaps(rows.subList(start, i), from, to, gaps);
                }
                start = i + 1;
            }
        }
        return gaps;
    }

    private static void gaps(List<Row> rows, double from, double to, List<Double> gaps) {
        int[] taken = new int[(int) Math.ceil(to - from) + 2];
        for (Row row : rows) {
            for (Cell cell : row.cells()) {
                int first = (int) Math.floor(cell.left() - from);
                int last = (int) Math.floor(cell.right() - from);
                for (int x = Math.max(0, first); x <= Math.min(last, taken.length - 1); x++) {
                    taken[x]++;
                }
            }
        }
        int most = (int) (CROSSING * rows.size());
        int start = 0;
        for (int x = 0; x <= taken.length; x++) {
            if (x == taken.length || taken[x] > most) {
                int end = emptiest(taken, start, x);
                boolean inside = end > NARROWEST_OF_MANY * (to - from) && end < (1 - NARROWEST_OF_MANY) * (to - from);
                if (x - start >= NARROWEST_GAP && inside) {
                    gaps.add(from + end);
                }
                start = x + 1;
            }
        }
    }

    /** Where the longest stretch of the emptiest places between two of them ends. */
    private static int emptiest(int[] taken, int from, int to) {
        int least = Integer.MAX_VALUE;
        int longest = 0;
        int end = from;
        int run = 0;
        for (int x = from; x < to; x++) {
            if (taken[x] < least) {
                least = taken[x];
                longest = 0;
                run = 0;
            }
            run = taken[x] == least ? run + 1 : 0;
            if (run > longest) {
                longest = run;
                end = x + 1;
            }
        }
        return end;
    }

    private static double right(Row row) {
        return row.cells().get(row.cells().size() - 1).right();
    }

    /** Panels of a label: small print beside a front in large type, or one language beside another. */
    private static boolean partsPanels(List<Row> run, double left) {
        List<Row> lefts = new ArrayList<>();
        List<Row> rights = new ArrayList<>();
        run.forEach(row -> side(row, left, false, lefts));
        run.forEach(row -> side(row, left, true, rights));
        if (Math.min(lefts.size(), rights.size()) < ENOUGH_PROSE) {
            return false;
        }
        boolean languages = foreign(lefts) != foreign(rights);
        boolean print = Math.max(lefts.size(), rights.size()) >= ENOUGH_TEXT && (flows(lefts) || flows(rights));
        return languages || (print && !beside(lefts, rights));
    }

    /** Whether most of the longer lines are Spanish, as half of many labels is. */
    private static boolean foreign(List<Row> side) {
        List<Row> lines = side.stream()
                .filter(row -> row.cells().stream()
                                .mapToInt(cell -> cell.words().size())
                                .sum()
                        >= FEWEST_WORDS)
                .toList();
        long foreign =
                lines.stream().filter(row -> FOREIGN.matcher(row.text()).find()).count();
        return lines.size() >= FEWEST_ROWS && foreign > MOSTLY_FULL * lines.size();
    }

    /** Where the right side begins: what stands beyond the running text of the left side, as numbers of sections, belongs to it. */
    private static double edge(Stretch stretch) {
        double text = stretch.rows.stream()
                .flatMap(row -> row.cells().stream())
                .filter(cell ->
                        cell.left() < stretch.left - SAME_LEFT && cell.words().size() >= FEWEST_WORDS)
                .mapToDouble(Cell::right)
                .max()
                .orElse(stretch.left);
        return stretch.rows.stream()
                .flatMap(row -> row.cells().stream())
                .filter(cell -> cell.left() > text
                        && (cell.left() >= stretch.left
                                || OWN_NUMBER.matcher(cell.text()).matches()))
                .mapToDouble(Cell::left)
                .min()
                .orElse(stretch.left);
    }

    private static void side(Row row, double left, boolean right, List<Row> ordered) {
        List<Cell> cells = row.cells().stream()
                .filter(cell -> cell.left() >= left - SAME_LEFT == right)
                .toList();
        if (!cells.isEmpty()) {
            ordered.add(new Row(row.page(), cells));
        }
    }

    /** Lefts in the middle of the page at which several cells begin. */
    private static List<Double> candidates(List<Row> page, double narrowest) {
        double from = page.stream().mapToDouble(row -> row.first().left()).min().orElse(0);
        double to = page.stream()
                .flatMap(row -> row.cells().stream())
                .mapToDouble(Cell::right)
                .max()
                .orElse(0);
        double margin = narrowest * (to - from);
        List<Double> lefts = page.stream()
                .flatMap(row -> row.cells().stream())
                .map(Cell::left)
                .filter(left -> left > from + margin && left < to - margin)
                .sorted(Comparator.naturalOrder())
                .toList();
        List<Double> candidates = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= lefts.size(); i++) {
            if (i == lefts.size() || lefts.get(i) - lefts.get(start) > SAME_LEFT) {
                if (i - start >= FEWEST_ROWS) {
                    candidates.add(lefts.get(start));
                }
                start = i;
            }
        }
        return candidates;
    }

    /** Stretches of rows that no cell carries over the gutter. */
    private static List<Stretch> runs(List<Row> rows, double left) {
        return runs(rows, left, row -> begins(row, left));
    }

    private static List<Stretch> runs(List<Row> rows, double left, Predicate<Row> counts) {
        List<Stretch> runs = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= rows.size(); i++) {
            if (i == rows.size() || crosses(rows.get(i), left)) {
                List<Row> run = rows.subList(from, i);
                if (run.stream().filter(counts).count() >= FEWEST_ROWS) {
                    runs.add(new Stretch(from, run, left));
                }
                from = i + 1;
            }
        }
        return runs;
    }

    private static boolean crosses(Row row, double left) {
        return row.cells().stream().anyMatch(cell -> cell.left() < left - SAME_LEFT && cell.right() > left - TOUCHING);
    }

    private static boolean reaches(Row row, double left) {
        return row.cells().stream().anyMatch(cell -> cell.left() >= left - SAME_LEFT);
    }

    private static boolean begins(Row row, double left) {
        return row.cells().stream().anyMatch(cell -> Math.abs(cell.left() - left) <= SAME_LEFT);
    }

    private boolean parts(List<Row> run, double left) {
        List<Row> lefts = new ArrayList<>();
        List<Row> rights = new ArrayList<>();
        run.forEach(row -> side(row, left, false, lefts));
        run.forEach(row -> side(row, left, true, rights));
        return rights.stream()
                        .anyMatch(row -> Math.abs(row.first().left() - left) <= SAME_LEFT && landmark.test(row.text()))
                || (balanced(lefts, rights) && prose(lefts) && prose(rights));
    }

    private static boolean partsSmallPrint(List<Row> run, double left) {
        List<Row> lefts = new ArrayList<>();
        List<Row> rights = new ArrayList<>();
        run.forEach(row -> side(row, left, false, lefts));
        run.forEach(row -> side(row, left, true, rights));
        boolean much = Math.min(lefts.size(), rights.size()) >= ENOUGH_TEXT
                || (full(lefts) > MOSTLY_FULL * lefts.size() && full(rights) > MOSTLY_FULL * rights.size());
        return much && flows(lefts) && flows(rights) && (!beside(lefts, rights) || measured(lefts, rights, left));
    }

    /** Columns on one grid of lines: on either side of the gutter most lines are running text that fills its measure. */
    private static boolean measured(List<Row> lefts, List<Row> rights, double left) {
        List<Cell> before = lefts.stream()
                .map(row -> row.cells().get(row.cells().size() - 1))
                .toList();
        List<Cell> behind = rights.stream()
                .map(Row::first)
                .filter(cell -> Math.abs(cell.left() - left) < INDENT)
                .toList();
        return fills(before) && fills(behind);
    }

    private static boolean fills(List<Cell> side) {
        double widest =
                side.stream().mapToDouble(cell -> cell.box().width()).max().orElse(0);
        long full = side.stream()
                .filter(cell -> cell.words().size() > FEWEST_WORDS && cell.box().width() > MEASURE * widest)
                .count();
        return side.size() >= ENOUGH_TEXT && full > MOSTLY * side.size();
    }

    /** Line under line of running text. */
    private static boolean flows(List<Row> side) {
        if (side.size() < ENOUGH_PROSE) {
            return false;
        }
        int near = 0;
        int wordy = 0;
        for (int i = 0; i < side.size(); i++) {
            double height = side.get(i).bottom() - side.get(i).top();
            near += i > 0 && side.get(i).top() - side.get(i - 1).top() < DENSE * height ? 1 : 0;
            wordy += side.get(i).cells().stream()
                                    .mapToInt(cell -> cell.words().size())
                                    .sum()
                            >= FEWEST_WORDS
                    ? 1
                    : 0;
        }
        return near > MOSTLY * side.size() && wordy > MOSTLY * side.size();
    }

    /** Whether most lines of the side with fewer have a line of the other side beside them, as in a table. */
    private static boolean beside(List<Row> lefts, List<Row> rights) {
        List<Row> few = lefts.size() <= rights.size() ? lefts : rights;
        List<Row> many = lefts.size() <= rights.size() ? rights : lefts;
        long beside = few.stream()
                .filter(row -> many.stream()
                        .anyMatch(other -> Math.abs(other.bottom() - row.bottom())
                                < ASIDE * Math.min(row.bottom() - row.top(), other.bottom() - other.top())))
                .count();
        return beside > MOSTLY * few.size();
    }

    /** Labels of a table stand wider apart than the lines of their values. */
    private static boolean balanced(List<Row> lefts, List<Row> rights) {
        return Math.min(lefts.size(), rights.size()) > BALANCE * Math.max(lefts.size(), rights.size());
    }

    private static boolean prose(List<Row> side) {
        if (side.size() < ENOUGH_PROSE) {
            return false;
        }
        return full(side) > MOSTLY * side.size();
    }

    /** How many lines fill the side without a gap. */
    private static long full(List<Row> side) {
        double from = side.stream().mapToDouble(row -> row.first().left()).min().orElse(0);
        double to = side.stream()
                .mapToDouble(row -> row.cells().get(row.cells().size() - 1).right())
                .max()
                .orElse(0);
        return side.stream()
                .filter(row -> row.cells().size() == 1 && row.first().box().width() > FULL * (to - from))
                .count();
    }
}
