package plumbrow.documents.sheet.section;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.section.Headings.Heading;

/**
 * Parts the rows of a sheet into its sections.
 *
 * Where most headings have numbers, words without a number are no heading. A heading that comes again goes on with its
 * section when it says so or when nothing stood under it before, as in a list of contents. What stands under a heading in
 * another language is left out when the sheet has the same in English.
 */
public final class Sections {
    private static final int MOST = 8;
    private static final int NEAR = 2;
    private static final int SHORT = 40;
    private static final double ASIDE = 36;

    /** A line that ends so is not over, and the next is no heading: "see also / Section 13". */
    private static final Pattern OPEN_END =
            Pattern.compile("(?i)(?:^|.*\\W)(?:see|refer to|also|and|in|of|with|the|under)$");

    private static final Pattern LAST_WORDS = Pattern.compile("\\p{Ll}[\\p{L}'’ /-]{2,50}");
    /** A heading that runs over its line. */
    private static final Pattern NUMBERED = Pattern.compile(
            "(?iu)(?:(?:section|sección)\\s*)?(?:\\d{1,2}|[ivx]{1,5})\\s?[-.:)–].*|section\\s*\\d{1,2}\\b.*");

    /** A heading without a number stands out by its capitals. */
    private static final Pattern CAPITALS = Pattern.compile("[^\\p{Ll}]{6,}");

    private static final int LONG_LINE = 90;

    private final List<Row> front = new ArrayList<>();
    private final Map<SheetSection, SectionText> sections = new EnumMap<>(SheetSection.class);
    private boolean leftOut;
    private final List<SectionText> inOrder = new ArrayList<>();

    /** A heading, and how many rows it takes. */
    private record Spot(Heading heading, int rows) {}

    private Sections() {}

    public static Sections of(Paper paper) {
        Sections found = new Sections();
        List<Row> rows = paper.rows();
        List<@Nullable Spot> spots = spots(rows);
        boolean bilingual = spots.stream().anyMatch(spot -> spot != null && !spot.heading.english());
        found.part(rows, spots, bilingual);
        return found;
    }

    /** What stands before the first heading; everything where there is none. */
    public List<Row> front() {
        return front;
    }

    /** The sections found, in the order of the paper. */
    public List<SectionText> all() {
        return inOrder;
    }

    /** The rows of a section; none where it isn't found. */
    public List<Row> rows(SheetSection section) {
        SectionText text = sections.get(section);
        return text == null ? List.of() : text.rows();
    }

    /** Whether a line can only be a heading: one in a column of its own tells columns from tables. */
    public static boolean isHeading(String line) {
        return Headings.read(line)
                .filter(heading -> heading.numbered()
                        || (heading.section() != null
                                && CAPITALS.matcher(line.strip()).matches()))
                .isPresent();
    }

    private void part(List<Row> rows, List<@Nullable Spot> spots, boolean bilingual) {
        SectionText current = null;
        boolean foreign = false;
        double foreignLeft = 0;
        int headedAt = -NEAR;
        for (int i = 0; i < rows.size(); i++) {
            Spot spot = spots.get(i);
            Heading heading = spot == null ? null : spot.heading;
            SheetSection section = heading == null ? null : heading.section();
            if (foreign && i > 0 && rows.get(i - 1).page() != rows.get(i).page()) {
                foreign = rows.get(i).first().left() > foreignLeft - ASIDE;
            }
            if (spot == null || heading == null || section == null) {
                keep(rows.get(i), current, foreign, bilingual);
                continue;
            }
            if (!heading.english()) {
                foreignLeft = rows.get(i).first().left();
                foreign = foreign || !(current != null && current.section() == section && i - headedAt <= NEAR);
            } else {
                SectionText earlier = sections.get(section);
                boolean open = earlier != null && current != null && current.section() == section;
                if (earlier == null || (earlier.rows().isEmpty() && !open)) {
                    inOrder.remove(earlier);
                    current = open(section, rows.subList(i, i + spot.rows));
                } else if (heading.continued() || open) {
                    current = earlier;
                } else {
                    keep(rows.get(i), current, foreign, bilingual);
                    continue;
                }
                foreign = false;
                leftOut = false;
                headedAt = i;
            }
            i += spot.rows - 1;
        }
    }

    private SectionText open(SheetSection section, List<Row> heading) {
        Passage.Builder words = new Passage.Builder();
        heading.forEach(row -> row.cells().forEach(cell -> words.line(row.page(), cell)));
        Quote quote = words.build().quote();
        SectionText text = new SectionText(section, quote, new ArrayList<>());
        sections.put(section, text);
        inOrder.add(text);
        return text;
    }

    private void keep(Row row, @Nullable SectionText current, boolean foreign, boolean bilingual) {
        boolean other = foreign || (bilingual && (Tongue.other(row.text()) || (leftOut && tail(row))));
        leftOut = other;
        if (other) {
            return;
        }
        if (current == null) {
            front.add(row);
        } else {
            current.rows().add(row);
        }
    }

    /** The short last line of a paragraph in another language. */
    private static boolean tail(Row row) {
        return row.text().endsWith(".") && row.text().length() < SHORT && !Tongue.english(row.text());
    }

    private static List<@Nullable Spot> spots(List<Row> rows) {
        List<@Nullable Spot> spots = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            spots.add(spot(rows, i));
        }
        long numbered = spots.stream()
                .filter(spot -> spot != null && spot.heading.numbered() && spot.heading.english())
                .map(spot -> spot == null ? null : spot.heading.section())
                .distinct()
                .count();
        if (numbered >= MOST) {
            spots.replaceAll(spot -> spot != null && spot.heading.numbered() ? spot : null);
        }
        return spots;
    }

    private static @Nullable Spot spot(List<Row> rows, int at) {
        Row row = rows.get(at);
        String line = line(row);
        if (at > 0 && OPEN_END.matcher(rows.get(at - 1).text()).matches()) {
            return null;
        }
        Optional<Heading> heading = Headings.read(line);
        boolean next = at + 1 < rows.size();
        if (heading.isPresent() && heading.get().section() == null) {
            Optional<Heading> both = next ? Headings.read(line + " " + line(rows.get(at + 1))) : Optional.empty();
            return both.filter(words -> words.section() != null)
                    .map(words -> new Spot(words, 2))
                    .orElse(null);
        }
        if (heading.isPresent()) {
            boolean plain = heading.get().numbered() || row.cells().size() == 1;
            return plain ? new Spot(heading.get(), next && runsOver(line, rows.get(at + 1)) ? 2 : 1) : null;
        }
        if (next && line.length() < LONG_LINE && NUMBERED.matcher(line).matches()) {
            return Headings.read(line + " " + line(rows.get(at + 1)))
                    .map(words -> new Spot(words, 2))
                    .orElse(null);
        }
        return null;
    }

    /** The last words of a heading in two languages, on a line of their own. */
    private static boolean runsOver(String heading, Row next) {
        return heading.contains(" / ")
                && next.cells().size() == 1
                && LAST_WORDS.matcher(next.text()).matches();
    }

    private static String line(Row row) {
        return String.join(" ", row.cells().stream().map(cell -> cell.text()).toList());
    }
}
