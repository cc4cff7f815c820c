package plumbrow.documents.label.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.paper.Word;

/** Puts lines together to paragraphs and takes these apart into sentences. */
final class Prose {
    /** No sentence of a label is longer [letters]; what is, is cut, so that no file takes long to read. */
    private static final int LONGEST = 900;

    private static final double NEW_PARAGRAPH = 1.45;
    private static final Pattern BULLET =
            Pattern.compile("^(?:[•·▪■●‣◦*]|[-–—](?=\\s)|\\(?(?:\\d{1,2}|[a-h])[.)](?=\\s))");
    private static final Pattern BEGINS = Pattern.compile("^[\\p{Lu}\\d(“\"'].*", Pattern.DOTALL);
    /** Words that begin an item of a list, even where its lines are as full as those of running text. */
    private static final Pattern STARTS = Pattern.compile(
            "^(?:Do not|Allow|Apply|Max(?:imum|\\.)|Min(?:imum|\\.)|Pre-?[Hh]arvest|Make|Sequential|REI|PHI|Use|Not|Never|Wait|Restricted|Long-sleeved|Short-sleeved|Coveralls|Chemical-resistant|Waterproof|Shoes|Socks|Protective|A NIOSH|Gloves|Goggles|EPA|Contains|KEEP OUT|CAUTION|WARNING|DANGER)\\b.*",
            Pattern.DOTALL);

    private static final Pattern PAIR = Pattern.compile("^\\p{Lu}[^:.;]{2,50}:(?:\\s.*)?", Pattern.DOTALL);
    private static final Pattern UNFINISHED = Pattern.compile(
            "(?i).*(?:,|\\b(?:and|or|as|of|the|to|than|with|by|for|in|on|at|a|an|per|plus|from|between|within|least|minimum|maximum|following|more|not|is|are)|[-–/(])$");
    /** The end of a column or page whose last line has come to its end, or is an address or number. */
    private static final Pattern FINISHED = Pattern.compile(".*(?:[.!?:)]|\\d{3})");

    private static final Pattern CAPITAL = Pattern.compile("\\p{Lu}.*", Pattern.DOTALL);
    private static final Pattern END = Pattern.compile(
            "[.!?][)\"”]?\\s+(?=[\\p{Lu}\\d•(“\"])|\\s[•▪■●‣]\\s|(?<=\\p{Ll}{4})\\.(?=\\p{Lu}\\p{Ll}{3})");
    private static final Pattern SHORTENED = Pattern.compile(
            "(?i)(?:\\b(?:no|reg|est|fl|approx|vs|dr|mr|inc|e\\.g|i\\.e|u\\.s|st|min|max|fig|nos|spp|cv|bulletins live)|\\b\\p{L}\\.\\p{L})$");
    private static final Pattern SHOUT = Pattern.compile("[\\p{Lu}\\d][\\p{Lu}\\d\\s/&,()'’®–—-]{2,70}:?");
    private static final Pattern AMOUNT =
            Pattern.compile(".*\\d\\s?(?:FL|OZ|PT|QT|LB|GAL|DAYS?|HOURS?|FEET|FT|MPH|%)\\b.*|.*\\bDO NOT\\b.*");

    private Prose() {}

    /** A short line in capitals that says nothing but what follows. */
    static boolean isShout(String line) {
        String text = line.strip();
        return SHOUT.matcher(text).matches()
                && text.equals(text.toUpperCase(Locale.ROOT))
                && !AMOUNT.matcher(text).matches()
                && text.split("\\s+", -1).length <= 8;
    }

    /** Paragraphs of a run of lines without headings and tables. */
    static List<Passage> paragraphs(List<Row> rows, boolean lineByLine) {
        double right = rows.stream()
                .mapToDouble(row -> row.cells().get(row.cells().size() - 1).right())
                .max()
                .orElse(0);
        List<Passage> paragraphs = new ArrayList<>();
        Passage.Builder open = new Passage.Builder();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (i > 0 && (lineByLine || breaks(rows.get(i - 1), row, right))) {
                paragraphs.add(open.build());
                open = new Passage.Builder();
            }
            open.line(Passage.of(row)).endLine();
        }
        paragraphs.add(open.build());
        return paragraphs.stream().filter(each -> !each.isEmpty()).toList();
    }

    private static boolean breaks(Row above, Row row, double right) {
        String text = row.text();
        if (BULLET.matcher(text).find()
                || row.cells().size() > 1
                || above.cells().size() > 1) {
            return true;
        }
        if (UNFINISHED.matcher(above.text()).matches() || !BEGINS.matcher(text).matches()) {
            return false;
        }
        if (STARTS.matcher(text).matches() || PAIR.matcher(text).matches()) {
            return true;
        }
        boolean elsewhere = row.page() != above.page() || row.top() < above.top();
        if (elsewhere
                && FINISHED.matcher(above.text()).matches()
                && CAPITAL.matcher(text).matches()) {
            return true;
        }
        double height = above.bottom() - above.top();
        boolean gap = row.page() == above.page() && row.top() - above.top() > NEW_PARAGRAPH * height;
        Word first = row.first().words().get(0);
        double room = right - above.cells().get(above.cells().size() - 1).right();
        boolean sameColumn = row.page() == above.page() && row.top() > above.top();
        return gap || (sameColumn && room > first.box().width() + height);
    }

    /** Sentences and list items of a paragraph. */
    static List<Passage> sentences(Passage paragraph) {
        List<Passage> sentences = new ArrayList<>();
        String text = paragraph.text();
        Matcher end = END.matcher(text);
        int from = 0;
        while (end.find()) {
            if (!SHORTENED.matcher(text.substring(from, end.start())).find()) {
                add(paragraph.part(from, end.end()), sentences);
                from = end.end();
            }
        }
        add(paragraph.from(from), sentences);
        return sentences;
    }

    private static void add(Passage sentence, List<Passage> sentences) {
        Matcher bullet = BULLET.matcher(sentence.text());
        Passage plain = bullet.find() ? sentence.from(bullet.end()) : sentence;
        while (plain.text().length() > LONGEST) {
            int blank = plain.text().lastIndexOf(' ', LONGEST);
            int cut = blank > 0 ? blank : LONGEST;
            sentences.add(plain.part(0, cut));
            plain = plain.from(cut);
        }
        if (!plain.isEmpty()) {
            sentences.add(plain);
        }
    }
}
