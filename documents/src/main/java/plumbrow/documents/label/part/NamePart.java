package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topics;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;

/**
 * What the product is called: the name that its own sentences give it, as "hereafter referred to as", else the lines in the
 * largest type of a page's front, else the name before its first sentence. On many fronts the name is a picture.
 */
final class NamePart implements Part {
    private static final Pattern NO_NAME = Pattern.compile(
            "(?i).*\\b(?:restricted use|danger|warning|caution|keep out|group|net (?:contents|wt)|epa|label|directions|active|first aid|booklet|for use|page|warranty|guaranteed?|money back|read|shake|stop|storage|disposal|precautionary|statements?|hazards|kills?|proof of purchase|for up to|contains|see|weeks?|months?|hours|value size|pack)\\b.*");
    private static final Pattern NO_LINE = Pattern.compile(
            "(?i)(?:[+•*†‡]|for\\b|no\\b(?!-)|with$|an?\\b).*|.*\\d\\s?(?:cu|sq|fl|oz|ft|gal)\\b.*|.*[áéíóúñ].*|.*\\p{Ll}.*\\b(?:de|para|con)\\b.*");
    private static final Pattern NO_FIRST =
            Pattern.compile("(?i)(?:herbicide|insecticide|fungicide|miticide|specimen|for .*)");
    /** The second line of a name: "500 SC", "4L". */
    private static final Pattern CODE = Pattern.compile("\\d{1,4}(?:\\.\\d)?\\s?\\p{Lu}{1,4}");

    private static final Pattern REFERRED = Pattern.compile(
            "(?i)\\b(?:hereafter|hereinafter|herein|from here on)(?:\\s+(?:is|be))?\\s+(?:referred to|known)\\s+as\\s+[\"“‘']?(?<name>\\p{Lu}[^)\"”’;,.]{1,40})");
    private static final Pattern SUBJECT = Pattern.compile(
            "^(?<name>\\p{L}[\\p{L}\\d®™!+-]*(?:\\s+(?:®\\s?)?(?:\\p{Lu}{1,4}|\\d+(?:\\.\\d+)?)(?=\\s)){0,3}(?:\\s+(?:\\p{Lu}|\\d)[\\p{L}\\d®™+.-]*){0,2}?)\\s+(?:(?:[\\p{Lu}][\\p{L}]+\\s+){0,3})(?:is (?:an?|for)|contains|will (?:kill|control))\\b");
    private static final double LARGE = 1.3;
    private static final double OF_LARGEST = .3;
    private static final double CLOSE = 2.2;
    private static final int LONGEST = 60;
    private static final int MOST_LINES = 5;
    private static final int MOST_WORDS = 14;

    @Override
    public void read(LabelText label, Readings readings) {
        Optional<Passage> referred = inSentences(label, REFERRED);
        if (referred.isPresent()) {
            state(List.of(referred.get()), readings);
            return;
        }
        List<Passage> front = front(label);
        if (!front.isEmpty()) {
            state(front, readings);
            return;
        }
        Optional<Passage> subject = inSentences(label, SUBJECT);
        if (subject.isPresent() && often(label, subject.get().text())) {
            state(List.of(subject.get()), readings);
        }
    }

    private static void state(List<Passage> lines, Readings readings) {
        Passage.Builder all = new Passage.Builder();
        lines.forEach(line -> all.line(line).endLine());
        Passage passage = all.build();
        String words = clean(String.join(
                " ", lines.stream().map(line -> unspaced(line.text())).toList()));
        if (words.length() >= 3 && words.length() <= LONGEST) {
            readings.text(LabelKind.PRODUCT_NAME, words, passage.quote());
        }
    }

    private static String clean(String text) {
        String plain = text.replaceAll("[®™*†‡₀-₉\\t\\n]+", " ")
                .replaceAll("\\s+", " ")
                .replaceAll("(?i)\\s+(?:with|for|and|by|the)$", "")
                .strip();
        return plain;
    }

    /** "K I L L E R" is one word. */
    private static String unspaced(String line) {
        String plain = line.replaceAll("[®™\\t]+", " ").replaceAll("\\s+", " ").strip();
        Matcher spaced =
                Pattern.compile("(?:(?<=^|\\s)\\p{L}\\s){2,}\\p{L}(?=\\s|$)").matcher(plain);
        return spaced.replaceAll(match -> match.group().replace(" ", ""));
    }

    private static Optional<Passage> inSentences(LabelText label, Pattern pattern) {
        for (Sentence sentence : label.sentences()) {
            Matcher found = pattern.matcher(sentence.text());
            if (found.find()) {
                Passage name = sentence.passage().part(found.start("name"), found.end("name"));
                String first = name.text().split("\\s+", 2)[0];
                boolean word = List.of(
                                "this", "the", "it", "product", "if", "use", "do", "these", "in", "for", "some",
                                "certain")
                        .contains(first.toLowerCase(Locale.ROOT));
                if (!word && !NO_NAME.matcher(name.text()).matches()) {
                    return Optional.of(name);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean often(LabelText label, String name) {
        String first = clean(name).split("\\s+", 2)[0];
        return label.sentences().stream()
                        .filter(sentence -> sentence.text().contains(first))
                        .count()
                >= 3;
    }

    /** The largest lines of the first page that has any, one under the other. */
    private static List<Passage> front(LabelText label) {
        Map<Integer, List<Row>> pages = new HashMap<>();
        List<Double> heights = new ArrayList<>();
        for (LabelText.Line line : label.lines()) {
            for (Cell cell : line.row().cells()) {
                Row alone = new Row(line.row().page(), List.of(cell));
                pages.computeIfAbsent(alone.page(), page -> new ArrayList<>()).add(alone);
                heights.add(height(alone));
            }
        }
        heights.sort(Comparator.naturalOrder());
        if (heights.isEmpty()) {
            return List.of();
        }
        double usual = heights.get(heights.size() / 2);
        for (int page : pages.keySet().stream().sorted().limit(2).toList()) {
            List<Row> rows = pages.getOrDefault(page, List.of());
            Optional<Row> largest = rows.stream()
                    .filter(row -> height(row) >= LARGE * usual
                            && names(row)
                            && !NO_FIRST.matcher(row.text()).matches())
                    .max(Comparator.comparingDouble(NamePart::height));
            if (largest.isPresent()) {
                return stack(rows, largest.get());
            }
        }
        return List.of();
    }

    private static boolean names(Row row) {
        return Topics.of(row.text()).isEmpty()
                && !row.text().matches(".*[.;]")
                && row.text().split("\\s+", -1).length <= MOST_WORDS
                && !NO_LINE.matcher(row.text()).matches()
                && !NO_NAME.matcher(row.text()).matches()
                && row.text().matches(".*\\p{L}{2}.*|(?:\\p{L}\\s){2,}\\p{L}");
    }

    /** Lines above and below in nearly as large a type that stand over or under it. */
    private static List<Passage> stack(List<Row> rows, Row largest) {
        List<Row> sorted = new ArrayList<>(rows.stream()
                .filter(row -> (names(row)
                                || (row.top() > largest.top()
                                        && CODE.matcher(row.text()).matches()))
                        && height(row) >= OF_LARGEST * height(largest)
                        && over(row, largest))
                .sorted(Comparator.comparingDouble(Row::top))
                .toList());
        int at = sorted.indexOf(largest);
        int from = at;
        while (from > 0 && near(sorted.get(from - 1), sorted.get(from), largest)) {
            from--;
        }
        int to = at;
        while (to + 1 < sorted.size() && near(sorted.get(to), sorted.get(to + 1), largest)) {
            to++;
        }
        if (to - from >= MOST_LINES) {
            return List.of(Passage.of(largest));
        }
        return sorted.subList(from, to + 1).stream().map(Passage::of).toList();
    }

    private static boolean over(Row row, Row largest) {
        return row.first().left() < largest.first().right()
                && row.first().right() > largest.first().left();
    }

    private static boolean near(Row above, Row below, Row largest) {
        return below.top() - above.bottom() < CLOSE / 2 * height(largest);
    }

    private static double height(Row row) {
        return row.bottom() - row.top();
    }
}
