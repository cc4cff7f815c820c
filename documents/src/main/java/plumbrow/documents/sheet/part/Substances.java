package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Row;
import plumbrow.documents.paper.Word;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.ValueKind;

/** Whose value it is: one of the sheet's ingredients, another substance by the name in the table, or the product's own. */
final class Substances {
    private static final Pattern PRODUCT =
            Pattern.compile("(?i)\\b(?:product|formulation|formulated|mixture|similar formulation|preparation)\\b");
    private static final Pattern CAS_BEHIND =
            Pattern.compile("(?i)[\\s(\\[–-]*(?:CAS[^\\d]{0,8})?0*\\d{2,7}-\\d{2}-\\d[)\\]\\s]*");
    private static final int SHORTEST = 4;
    private static final int SHORTEST_NAME = 3;
    private static final int SHORTEST_PART = 6;
    private static final int LIKENESS = 10;
    private static final double SAME_LEFT = 4;

    private final List<String> names = new ArrayList<>();
    private final List<String> keys = new ArrayList<>();
    private final List<String> products = new ArrayList<>();
    private final Pattern pattern;

    Substances(Readings readings) {
        readings.stated(ValueKind.INGREDIENT).forEach(stated -> {
            String name = ((Content.Ingredient) stated.content()).name();
            if (name.length() >= SHORTEST_NAME
                    && !name.toLowerCase(Locale.ROOT).matches(".*\\b(?:other|inert|water|total).*")) {
                names.add(name);
            }
        });
        readings.stated(ValueKind.PRODUCT_NAME)
                .forEach(stated -> products.add(key(((Content.Text) stated.content()).words())));
        names.sort(Comparator.comparingInt(String::length).reversed());
        names.forEach(name -> keys.add(key(name)));
        pattern = names.isEmpty()
                ? Pattern.compile("(?!)")
                : Pattern.compile(names.stream()
                        .map(Substances::loose)
                        .collect(Collectors.joining("|", "(?i)(?<![\\p{L}])(?:", ")(?![\\p{L}])")));
    }

    /** A name with any blanks between its words, and after its hyphens as where a line was broken. */
    private static String loose(String name) {
        return Pattern.quote(name).replace(" ", "\\E\\s+\\Q").replace("-", "-\\E\\s?\\Q");
    }

    /** The ingredient named last in a text, "" for the product named last, or what was before. */
    String in(String text, String before) {
        String found = before;
        int at = -1;
        Matcher substance = pattern.matcher(text);
        while (substance.find()) {
            found = named(substance.group());
            at = substance.start();
        }
        Matcher product = PRODUCT.matcher(text);
        while (product.find()) {
            if (product.start() > at) {
                found = "";
            }
        }
        return found;
    }

    /** The substance that a cell of a table names: an ingredient, another one as printed, or "" for the product itself. */
    String ofCell(String printed) {
        String text = Prose.of(printed).replaceAll("^[\\s:•*]+|[\\s:*]+$", "");
        String key = key(text);
        if (key.isEmpty() || products.contains(key)) {
            return "";
        }
        for (int i = 0; i < keys.size(); i++) {
            if (keys.get(i).equals(key)) {
                return names.get(i);
            }
        }
        String known = in(text, "\0");
        if (!known.equals("\0")) {
            return known;
        }
        List<String> begun = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            if (key.length() >= SHORTEST_PART && (keys.get(i).startsWith(key) || key.startsWith(keys.get(i)))) {
                begun.add(names.get(i));
            }
        }
        if (begun.size() == 1) {
            return begun.get(0);
        }
        return CAS_BEHIND.matcher(text).replaceAll(" ").strip().replaceAll("[\\s–−-]+$", "");
    }

    /** Whether the cell's words are those of an ingredient, from its first on. */
    boolean begins(String printed) {
        String key = key(printed);
        return (keys.contains(key) && key.length() >= SHORTEST_NAME)
                || (key.length() >= SHORTEST
                        && keys.stream().anyMatch(each -> each.startsWith(key) || key.startsWith(each)));
    }

    /** Rows in which an ingredient's name that runs over its line stands whole on the first of them. */
    List<Row> joined(List<Row> rows) {
        List<Row> joined = new ArrayList<>(rows);
        for (int i = 0; i + 1 < joined.size(); i++) {
            Row row = joined.get(i);
            Row next = joined.get(i + 1);
            boolean below = next.page() == row.page()
                    && Math.abs(next.first().left() - row.first().left()) < SAME_LEFT
                    && next.top() - row.top() < 2 * (row.bottom() - row.top());
            String both = key(row.first().text() + next.first().text());
            boolean runsOn = row.cells().size() > 1
                    && below
                    && !keys.contains(key(row.first().text()))
                    && keys.contains(both);
            if (runsOn) {
                List<Word> words = new ArrayList<>(row.first().words());
                words.addAll(next.first().words());
                List<Cell> cells = new ArrayList<>(List.of(new Cell(words)));
                cells.addAll(row.cells().subList(1, row.cells().size()));
                joined.set(i, new Row(row.page(), cells));
                if (next.cells().size() > 1) {
                    joined.set(
                            i + 1,
                            new Row(
                                    next.page(),
                                    next.cells().subList(1, next.cells().size())));
                } else {
                    joined.remove(i + 1);
                }
            }
        }
        return joined;
    }

    /** Whether a name begins like an ingredient's, though it goes on otherwise. */
    boolean resembles(String name) {
        String key = key(name);
        return key.length() >= LIKENESS && keys.stream().anyMatch(each -> each.startsWith(key.substring(0, LIKENESS)));
    }

    /** Whether a name goes on with the words of the next line: together they are an ingredient's, or the words say so. */
    boolean goesOn(String name, String next) {
        String both = key(name + next);
        if (keys.stream().anyMatch(each -> each.startsWith(both))) {
            return true;
        }
        if (keys.contains(key(name)) && !next.startsWith("(")) {
            return false;
        }
        return next.matches("[\\p{Ll}(].*")
                || name.matches(".*[-,(/]")
                || name.lastIndexOf('(') > name.lastIndexOf(')')
                || CAS_BEHIND.matcher(next).matches();
    }

    private String named(String printed) {
        String key = key(printed);
        for (int i = 0; i < keys.size(); i++) {
            if (keys.get(i).equals(key)) {
                return names.get(i);
            }
        }
        return printed.replaceAll("\\s+", " ");
    }

    private static String key(String name) {
        return CAS_BEHIND.matcher(name).replaceAll(" ").toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "");
    }
}
