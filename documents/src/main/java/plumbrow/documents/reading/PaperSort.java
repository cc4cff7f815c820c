package plumbrow.documents.reading;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.label.text.Topics;
import plumbrow.documents.paper.OpticalReader;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.paper.PaperReader;
import plumbrow.documents.paper.ReadOnce;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.section.Sections;

/** Whether a paper is a label or a safety data sheet. */
public enum PaperSort {
    SHEET,
    LABEL;

    /** Sentences that only labels have. */
    private static final List<Pattern> OF_LABELS = List.of(
            Pattern.compile("(?i)\\bdirections for use\\b"),
            Pattern.compile("(?i)\\bviolation of federal law to use this product\\b"),
            Pattern.compile("(?i)\\bagricultural use requirements\\b"),
            Pattern.compile("(?i)\\bkeep out of (?:the )?reach of children\\b"),
            Pattern.compile("(?i)\\brestricted[- ]entry interval\\b"),
            Pattern.compile("(?i)\\bEPA\\s+Est(?:ablishment|\\.)"));

    private static final Pattern OF_SHEETS = Pattern.compile("(?i)^\\W*(?:material )?safety data sheet\\b.*");
    private static final int FIRST_ROWS = 12;
    private static final int FEWEST_SECTIONS = 6;

    /** Which of the two a paper is; a sheet where nothing speaks for a label. */
    public static PaperSort of(Paper paper) {
        List<Row> rows = paper.rows();
        long sections = rows.stream()
                .map(Row::text)
                .filter(Sections::isHeading)
                .distinct()
                .count();
        boolean titled = java.util.stream.Stream.concat(
                        paper.heads().stream(), rows.stream().limit(FIRST_ROWS))
                .anyMatch(row -> OF_SHEETS.matcher(row.text()).matches());
        long signs = OF_LABELS.stream().filter(sign -> stands(sign, rows)).count();
        return !titled && signs >= 2 && sections < FEWEST_SECTIONS ? LABEL : SHEET;
    }

    /** In a line, or over the end of one: columns of small print are narrow. */
    private static boolean stands(Pattern sign, List<Row> rows) {
        for (int i = 0; i < rows.size(); i++) {
            String text = rows.get(i).text();
            String both = i + 1 < rows.size() ? text + " " + rows.get(i + 1).text() : text;
            if (sign.matcher(both).find()) {
                return true;
            }
        }
        return false;
    }

    /**
     * Reads a file as the paper it is: each sort has headings of its own by which columns are told from tables.
     *
     * @throws plumbrow.documents.paper.PaperTrouble if it can't be read as paper
     */
    public static Paper read(java.nio.file.Path file, PaperLimits limits) {
        return read(file, limits, null);
    }

    /**
     * The same, with pages that are pictures made out by OCR.
     *
     * @param optical makes them out; null where pictures are left alone
     */
    public static Paper read(java.nio.file.Path file, PaperLimits limits, @Nullable OpticalReader optical) {
        OpticalReader once = optical == null ? null : new ReadOnce(optical);
        Paper paper = PaperReader.read(file, limits, Sections::isHeading, once);
        return of(paper) == LABEL ? PaperReader.read(file, limits, Topics::isLandmark, once) : paper;
    }
}
