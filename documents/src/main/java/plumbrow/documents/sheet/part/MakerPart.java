package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.paper.Word;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;

/**
 * Who makes or sells the product, and where: the block of lines that ends with a town and its postal code, read upwards to its
 * first line. A block without a postal code is not told from other lines and left out.
 */
final class MakerPart implements Part {
    private static final String STATE =
            "(?:A[KLRZ]|C[AOT]|D[CE]|FL|GA|HI|I[ADLN]|K[SY]|LA|M[ADEINOST]|N[CDEHJMVY]|O[HKR]|P[AR]|RI|S[CD]|T[NX]|UT|V[AT]|W[AIVY]"
                    + "|Alabama|Alaska|Arizona|Arkansas|California|Colorado|Connecticut|Delaware|Florida|Georgia|Hawaii|Idaho|Illinois"
                    + "|Indiana|Iowa|Kansas|Kentucky|Louisiana|Maine|Maryland|Massachusetts|Michigan|Minnesota|Mississippi|Missouri"
                    + "|Montana|Nebraska|Nevada|New Hampshire|New Jersey|New Mexico|New York|North Carolina|North Dakota|Ohio|Oklahoma"
                    + "|Oregon|Pennsylvania|Rhode Island|South Carolina|South Dakota|Tennessee|Texas|Utah|Vermont|Virginia|Washington"
                    + "|West Virginia|Wisconsin|Wyoming)";
    private static final String COUNTRY = "(?:\\s*[-–,]?\\s*(?:U\\.?S\\.?A?\\.?|United States(?: of America)?))";

    /** "Springfield, IL 62701-1234 USA". */
    private static final Pattern TOWN = Pattern.compile("\\b[\\p{Lu}][\\p{L}.'-]+,?\\s+" + STATE
            + "\\.?,?\\s+\\d{5}(?:[-–]\\d{4})?(?!\\d)" + COUNTRY + "?(?![\\p{L}])");

    private static final Pattern STATE_AHEAD = Pattern.compile(STATE + "\\.?,?\\s+\\d{5}(?!\\d)");
    private static final Pattern COUNTRY_ALONE =
            Pattern.compile("(?i)(?:U\\.?S\\.?A?\\.?|United States(?: of America)?)");
    private static final Pattern STREET = Pattern.compile(
            "(?<![\\p{L}\\d])(?:\\d{1,6}(?:[-–]\\d{1,4})?[A-Z]?\\s+(?:[NSEW]\\.?\\s+)?[\\p{Lu}\\d]|P\\.?\\s?O\\.?\\s+(?:Box|Drawer)|One\\s+\\p{Lu})");
    private static final Pattern LABEL = Pattern.compile(
            "(?i)^[\\s:]*(?:(?:name,? )?(?:company|manufacturer|manufactured|supplier|distributor|distributed|registrant|importer|producer|vendor|"
                    + "responsible party|details of the supplier|address|prepared|made|u\\.?s\\.? headquarters|headquarters)"
                    + "[^:\\d]{0,60}?(?::|$)\\s*)");
    private static final Pattern LABEL_BEHIND =
            Pattern.compile("(?i).*\\b(?:company|manufacturer|supplier|distributor|registrant)(?: name)?\\s*:");
    private static final Pattern NO_NAME = Pattern.compile(
            "(?i).*(?:\\b(?:tel|phone|telephone|fax|e-?mail|www|http|emergency|section|identification|date|revision|product|use|sds|msds)\\b|@|\\d{3}[-. )]\\s?\\d{3}[-. ]\\d{4}).*");

    private static final Pattern SUBSECTION = Pattern.compile("\\d{1,2}(?:\\.\\d{1,2})*\\.?");

    /** Further than so below the line before, a line is no more of the same block, in heights. */
    private static final double APART = 2.3;

    private static final double SAME_LEFT = 15;
    private static final double BLANK = 14;
    private static final int MOST_LINES = 5;

    @Override
    public void read(SheetText sheet, Readings readings) {
        List<Row> rows = new ArrayList<>(sheet.front());
        rows.addAll(sheet.rows(SheetSection.IDENTIFICATION));
        seek(rows, readings);
        if (!readings.has(ValueKind.ADDRESS)) {
            seek(rows.stream().map(MakerPart::closed).toList(), readings);
        }
    }

    private static void seek(List<Row> rows, Readings readings) {
        for (int i = 0; i < rows.size() && !readings.has(ValueKind.ADDRESS); i++) {
            for (Cell cell : rows.get(i).cells()) {
                if (TOWN.matcher(cell.text()).find() || runsOver(rows, i, cell)) {
                    block(rows, i, cell, readings);
                    break;
                }
            }
        }
    }

    /** Cells with no more than a wide blank between them are one here: an address has no columns of its own. */
    private static Row closed(Row row) {
        List<Cell> cells = new ArrayList<>();
        for (Cell cell : row.cells()) {
            Cell last = cells.isEmpty() ? null : cells.get(cells.size() - 1);
            if (last != null
                    && cell.left() - last.right() < BLANK
                    && !last.text().endsWith(":")) {
                List<Word> words = new ArrayList<>(last.words());
                words.addAll(cell.words());
                cells.set(cells.size() - 1, new Cell(words));
            } else {
                cells.add(cell);
            }
        }
        return new Row(row.page(), cells);
    }

    /** A town at the end of one line, and its state and code on the next. */
    private static boolean runsOver(List<Row> rows, int at, Cell cell) {
        if (at == 0 || !STATE_AHEAD.matcher(cell.text()).lookingAt()) {
            return false;
        }
        Passage above = above(rows.get(at - 1), cell.left());
        return above != null && TOWN.matcher(above.text() + " " + cell.text()).find();
    }

    private static void block(List<Row> rows, int end, Cell town, Readings readings) {
        Passage line = Passage.of(rows.get(end).page(), town);
        int at = end;
        if (runsOver(rows, end, town)) {
            Passage above = above(rows.get(end - 1), town.left());
            line = above == null
                    ? line
                    : new Passage.Builder().line(above).line(line).build();
            at = end - 1;
        }
        Matcher found = TOWN.matcher(line.text());
        if (!found.find()) {
            return;
        }
        Passage last = withoutLabel(line.part(0, found.end()));
        List<Passage> lines = new ArrayList<>(List.of(last));
        boolean labelled = last.text().length() < found.end();
        double left = town.left();
        Row below = rows.get(at);
        boolean alone = rows.get(end).first().equals(town);
        boolean whole = street(last.text()) > 2;
        for (int i = at - 1; i >= 0 && lines.size() < MOST_LINES && !labelled && !whole; i--) {
            Row row = rows.get(i);
            String beside = beside(row, left);
            boolean named =
                    LABEL.matcher(beside).find() || LABEL_BEHIND.matcher(beside).matches();
            if (!beside.isEmpty()
                    && !named
                    && (alone || SUBSECTION.matcher(beside).matches() || beside.endsWith(":"))) {
                break;
            }
            Passage above = above(row, left);
            if (above == null) {
                if (row.page() != below.page() || apart(row, below)) {
                    break;
                }
                continue;
            }
            String text = above.text();
            Passage plain = withoutLabel(above);
            if (apart(row, below)
                    || plain.isEmpty()
                    || SUBSECTION.matcher(text).matches()
                    || NO_NAME.matcher(plain.text()).matches()) {
                break;
            }
            lines.add(plain);
            labelled = named || plain.text().length() < text.length();
            below = row;
        }
        Collections.reverse(lines);
        state(lines, country(rows, end, left), readings);
    }

    /** The words of a row from the block's left edge on; null where none begins there. */
    private static @Nullable Passage above(Row row, double left) {
        for (Cell cell : row.cells()) {
            if (cell.text().chars().noneMatch(Character::isLetterOrDigit)) {
                continue;
            }
            if (Math.abs(cell.left() - left) <= SAME_LEFT) {
                return Passage.of(row.page(), cell);
            }
            for (int i = 1; i < cell.words().size(); i++) {
                Word word = cell.words().get(i);
                boolean behindLabel = cell.words().get(i - 1).text().endsWith(":");
                if (behindLabel && Math.abs(word.box().left() - left) <= SAME_LEFT) {
                    return Passage.of(
                            row.page(),
                            new Cell(cell.words().subList(i, cell.words().size())));
                }
            }
        }
        return null;
    }

    /** What stands in a row left of the block: a label, or another block. */
    private static String beside(Row row, double left) {
        StringBuilder words = new StringBuilder();
        for (Cell cell : row.cells()) {
            if (cell.left() < left - SAME_LEFT) {
                boolean behind = cell.right() > left;
                words.setLength(behind || words.isEmpty() ? 0 : words.length());
                for (Word word : cell.words()) {
                    if (word.box().left() < left - SAME_LEFT) {
                        words.append(words.isEmpty() ? "" : " ").append(word.text());
                        if (behind
                                && word.text().endsWith(":")
                                && !LABEL_BEHIND.matcher(words).matches()
                                && !LABEL.matcher(words).find()) {
                            words.setLength(0);
                        }
                    }
                }
            }
        }
        return words.toString();
    }

    private static boolean apart(Row above, Row below) {
        return above.page() != below.page() || below.top() - above.top() > APART * (below.bottom() - below.top());
    }

    private static Passage withoutLabel(Passage line) {
        Matcher label = LABEL.matcher(line.text());
        Passage plain = label.find() ? line.from(label.end()) : line;
        return plain.text().startsWith(":") ? plain.from(1) : plain;
    }

    private static @Nullable Passage country(List<Row> rows, int at, double left) {
        for (int i = at + 1; i < rows.size() && i < at + 3; i++) {
            Passage next = above(rows.get(i), left);
            if (next != null) {
                return COUNTRY_ALONE.matcher(next.text()).matches() ? next : null;
            }
        }
        return null;
    }

    private static void state(List<Passage> lines, @Nullable Passage country, Readings readings) {
        Passage.Builder address = new Passage.Builder();
        Passage first = lines.get(0);
        int street = street(first.text());
        Passage name = null;
        int from = 0;
        if (street >= 0) {
            if (street > 0) {
                name = first.part(0, street);
            }
            from = street;
        } else if (lines.size() > 1) {
            name = first;
            from = first.text().length();
        }
        List<String> words = new ArrayList<>();
        for (Passage line : lines) {
            Passage part = line.equals(first) ? first.from(from) : line;
            if (!part.isEmpty()) {
                address.line(part);
                words.add(clean(part.text()));
            }
        }
        if (country != null) {
            address.line(country);
            words.add(country.text());
        }
        if (name != null && clean(name.text()).length() > 2) {
            readings.state(ValueKind.MAKER, new Content.Text(clean(name.text())), name.quote());
        }
        if (!words.isEmpty()) {
            readings.state(
                    ValueKind.ADDRESS,
                    new Content.Text(String.join(", ", words)),
                    address.build().quote());
        }
    }

    /** Where a street's number begins before the town, if one does; else -1. */
    private static int street(String text) {
        Matcher town = TOWN.matcher(text);
        Matcher street = STREET.matcher(text);
        street.region(0, town.find() ? town.start() : text.length());
        return street.find() ? street.start() : -1;
    }

    private static String clean(String text) {
        return Prose.of(text).replaceAll("^[\\s,:;-]+|[\\s,:;-]+$", "");
    }
}
