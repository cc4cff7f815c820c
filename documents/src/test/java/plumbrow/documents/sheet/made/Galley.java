package plumbrow.documents.sheet.made;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Pages with columns that text flows through; long words are broken where they don't fit. */
public final class Galley implements AutoCloseable {
    private static final float TOP = 720;
    private static final float BOTTOM = 60;
    private static final float RAISE = .38f;
    private static final float SMALL = .65f;
    private static final int SHORTEST_BROKEN = 9;

    /**
     * A column.
     *
     * @param left, width where it stands [pt]
     */
    public record Column(float left, float width) {}

    private final PDDocument document;
    private final PDType0Font regular;
    private final PDType0Font bold;
    private final float size;
    private final float lead;
    private final List<Column> columns;
    private final boolean parallel;
    private final float[] heights;
    private final List<PDPageContentStream> pages = new ArrayList<>();
    private final int[] pageOf;
    private int column;

    public Galley(
            PDDocument document,
            PDType0Font regular,
            PDType0Font bold,
            float size,
            List<Column> columns,
            boolean parallel)
            throws IOException {
        this.document = document;
        this.regular = regular;
        this.bold = bold;
        this.size = size;
        this.lead = size * 1.22f;
        this.columns = columns;
        this.parallel = parallel;
        this.heights = new float[columns.size()];
        this.pageOf = new int[columns.size()];
        newPage();
        java.util.Arrays.fill(heights, TOP - 24);
    }

    private void newPage() throws IOException {
        PDPage page = new PDPage(PDRectangle.LETTER);
        document.addPage(page);
        PDPageContentStream content = new PDPageContentStream(document, page);
        pages.add(content);
        show(content, "Page " + pages.size(), regular, 280, 30, size);
    }

    public void title(String text) throws IOException {
        show(pages.get(0), text, bold, 150, 740, size + 4);
    }

    /** Goes on in another column; of columns that run side by side. */
    public void in(int other) {
        column = other;
    }

    /** A line in another size. */
    public void large(String text, float other) throws IOException {
        feed(column);
        heights[column] -= other * .2f;
        show(pages.get(pageOf[column]), text, bold, columns.get(column).left, heights[column] - other * .6f, other);
        heights[column] -= other * 1.05f;
    }

    public void space(float points) {
        heights[column] -= points;
    }

    public void text(String text, boolean heavy, float indent) throws IOException {
        for (String line : broken(text, heavy ? bold : regular, columns.get(column).width - indent)) {
            feed(column);
            show(
                    pages.get(pageOf[column]),
                    line,
                    heavy ? bold : regular,
                    columns.get(column).left + indent,
                    heights[column],
                    size);
            heights[column] -= lead;
        }
    }

    /** Text in the second of two parallel columns. */
    void other(String text, boolean heavy) throws IOException {
        int first = column;
        column = 1;
        text(text, heavy, 0);
        column = first;
    }

    /** Label, dots, value. */
    public void leader(String label, String value, float at) throws IOException {
        float dot = width(".", regular);
        float end = width(label, regular);
        String dots = ".".repeat(Math.max(4, (int) ((at - end) / dot) - 2));
        text(label + " " + dots + " " + value, false, 0);
    }

    public void row(List<String> cells, List<Integer> shares) throws IOException {
        Column into = columns.get(column);
        List<List<String>> wrapped = new ArrayList<>();
        int lines = 1;
        for (int i = 0; i < cells.size(); i++) {
            List<String> cell = broken(cells.get(i), regular, shares.get(i) * into.width / 100 - 8);
            wrapped.add(cell);
            lines = Math.max(lines, cell.size());
        }
        for (int line = 0; line < lines; line++) {
            feed(column);
            float left = columns.get(column).left;
            for (int i = 0; i < wrapped.size(); i++) {
                if (line < wrapped.get(i).size()) {
                    show(pages.get(pageOf[column]), wrapped.get(i).get(line), regular, left, heights[column], size);
                }
                left += shares.get(i) * into.width / 100;
            }
            heights[column] -= lead;
        }
        heights[column] -= 2;
    }

    /** Goes to the next column or page when this one is full. */
    private void feed(int at) throws IOException {
        if (heights[at] > BOTTOM) {
            return;
        }
        if (parallel) {
            pageOf[at]++;
        } else if (at + 1 < columns.size()) {
            column = at + 1;
            pageOf[column] = pageOf[at];
            heights[column] = pageOf[column] == 0 ? TOP - 24 : TOP;
            return;
        } else {
            column = 0;
            pageOf[0] = pageOf[at] + 1;
        }
        if (pageOf[column] >= pages.size()) {
            newPage();
        }
        heights[column] = TOP;
    }

    private List<String> broken(String text, PDType0Font font, float width) throws IOException {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String rest = word;
            while (width((line.isEmpty() ? "" : line + " ") + rest, font) > width && !line.isEmpty()) {
                int at = hyphen(line.toString(), rest, font, width);
                if (at > 0) {
                    line.append(' ').append(rest, 0, at).append('-');
                    rest = rest.substring(at);
                }
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    /** Where a long word of small letters may be broken so that its first part still fits; 0 where not. */
    private int hyphen(String line, String word, PDType0Font font, float width) throws IOException {
        if (word.length() < SHORTEST_BROKEN || !word.matches("[a-z]+[.,;]?")) {
            return 0;
        }
        for (int at = word.length() - 4; at >= 3; at--) {
            boolean between = "aeiou".indexOf(word.charAt(at - 1)) >= 0 && "aeiou".indexOf(word.charAt(at)) < 0;
            if (between && width(line + " " + word.substring(0, at) + "-", font) <= width) {
                return at;
            }
        }
        return 0;
    }

    private float width(String text, PDType0Font font) throws IOException {
        return font.getStringWidth(TextPress.plain(text)) / 1000 * size;
    }

    private static void show(
            PDPageContentStream content, String text, PDType0Font font, float left, float base, float size)
            throws IOException {
        content.beginText();
        content.newLineAtOffset(left, base);
        String rest = text;
        int raised;
        while ((raised = rest.indexOf("^{")) >= 0) {
            int end = rest.indexOf('}', raised);
            content.setFont(font, size);
            content.showText(rest.substring(0, raised));
            content.setFont(font, size * SMALL);
            content.setTextRise(size * RAISE);
            content.showText(rest.substring(raised + 2, end));
            content.setTextRise(0);
            rest = rest.substring(end + 1);
        }
        content.setFont(font, size);
        content.showText(rest);
        content.endText();
    }

    @Override
    public void close() throws IOException {
        for (PDPageContentStream page : pages) {
            page.close();
        }
    }
}
