package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Finds the lines that come again at the top or the bottom of the pages, and page numbers.
 *
 * A line is a running head when it stands among the first or last lines of at least half of the pages (and of two), with
 * only its digits changing, and nothing else stands between it and the edge.
 */
final class RunningHeads {
    private static final int DEEPEST = 7;
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final Pattern PAGE_NUMBER = Pattern.compile(
            "(?i)(?:page|página|seite|pagina)?\\s*[-–]?\\s*\\d{1,3}\\s*(?:(?:/|of|de|von|sur)\\s*\\d{1,3})?\\s*[-–]?");

    private final Predicate<String> landmark;
    private final Set<String> heads = new HashSet<>();
    private final Map<String, Row> found = new LinkedHashMap<>();

    /** Looks at the pages, whose rows stand from top to bottom. */
    RunningHeads(List<List<Row>> pages, Predicate<String> landmark) {
        this.landmark = landmark;
        Map<String, Integer> counts = new HashMap<>();
        for (List<Row> page : pages) {
            Set<String> edges = new HashSet<>();
            for (int i = 0; i < page.size(); i++) {
                if (i < DEEPEST || page.size() - i <= DEEPEST) {
                    edges.add(shape(page.get(i)));
                }
            }
            edges.forEach(edge -> counts.merge(edge, 1, Integer::sum));
        }
        long filled = pages.stream().filter(page -> !page.isEmpty()).count();
        counts.forEach((shape, count) -> {
            if (count >= 2 && count * 2 >= filled) {
                heads.add(shape);
            }
        });
    }

    /** The page without them. */
    List<Row> without(List<Row> page) {
        int from = 0;
        while (from < page.size() && runs(page.get(from))) {
            keep(page.get(from++));
        }
        List<Row> feet = new ArrayList<>();
        int to = page.size();
        while (to > from && runs(page.get(to - 1))) {
            feet.add(page.get(--to));
        }
        Collections.reverse(feet);
        feet.forEach(this::keep);
        return page.subList(from, to);
    }

    /** Each running head once, as on the first page that had it. */
    List<Row> found() {
        return List.copyOf(found.values());
    }

    private void keep(Row row) {
        found.putIfAbsent(shape(row), row);
    }

    private boolean runs(Row row) {
        return heads.contains(shape(row)) || PAGE_NUMBER.matcher(row.text()).matches();
    }

    /**
     * The words with their digits left open, in whatever order: left and right pages have theirs the other way round. The headings
     * of two sections differ in nothing but their number, and are still no running head.
     */
    private String shape(Row row) {
        if (landmark.test(row.text())) {
            return row.text();
        }
        String[] words = DIGITS.matcher(row.text()).replaceAll("#").split("\\s+");
        Arrays.sort(words);
        return String.join(" ", words);
    }
}
