package plumbrow.documents.paper;

import java.io.IOException;
import java.io.Writer;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * Takes the letters of each page out of a PDF, as they are placed.
 *
 * A letter's size is that of its font after all scaling, of the text and of the page: many papers set 1-point letters on a page
 * scaled tenfold. Letters that run another way than most of the page are a note at its edge; slanting ones, a watermark.
 */
final class PdfGlyphs extends PDFTextStripper {
    /** How far a line may lean and still be a line [°]. */
    private static final double LEAN = 8;

    private static final int QUARTER = 90;

    /** Share of letters that must be unseen for a page to be a picture with text laid over it. */
    private static final double SEEN = .9;

    /** How far beside the page a letter may begin [pt]. */
    private static final double BESIDE = 2;

    /** Share of an em that the capitals of most faces are high; for fonts drawn by the file itself, which have no em. */
    private static final float CAPITAL = .7f;

    private final List<Letters> pages = new ArrayList<>();
    private final int most;
    /** The letters of the page by the quarter turn they run in. */
    private final List<List<Glyph>> byTurn =
            List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());

    private int count;
    /** Letters of the page, and those that are not drawn. */
    private int of;

    private int unseen;

    /** More letters than are read. */
    static final class TooMany extends RuntimeException {
        private static final long serialVersionUID = 1;

        TooMany() {
            super("more letters than are read", null, false, false);
        }
    }

    private PdfGlyphs(int most) {
        this.most = most;
    }

    /**
     * The letters of a page.
     *
     * @param turn by how much the page must be turned for them to stand upright [°], in quarter turns
     * @param hidden whether nobody sees them, as where they lie over the picture they were made out from
     */
    record Letters(List<Glyph> glyphs, int turn, boolean hidden) {}

    /** The letters of each page. */
    static List<Letters> of(PDDocument document, int most) throws IOException {
        PdfGlyphs glyphs = new PdfGlyphs(most);
        glyphs.setSuppressDuplicateOverlappingText(false);
        for (PDPage page : document.getPages()) {
            glyphs.pages.add(
                    new Letters(List.of(), page.getRotation(), false)); // the library passes over pages without content
        }
        glyphs.writeText(document, Writer.nullWriter());
        return glyphs.pages;
    }

    /** By how much a page must be turned to be read [°]. */
    static int turn(PDDocument document, int page, int most) throws IOException {
        PdfGlyphs glyphs = new PdfGlyphs(most);
        glyphs.setStartPage(page);
        glyphs.setEndPage(page);
        for (PDPage each : document.getPages()) {
            glyphs.pages.add(new Letters(List.of(), each.getRotation(), false));
        }
        glyphs.writeText(document, Writer.nullWriter());
        return glyphs.pages.get(page - 1).turn;
    }

    @Override
    protected void processTextPosition(TextPosition position) {
        if (++count > most) {
            throw new TooMany();
        }
        of++;
        unseen += getGraphicsState().getTextState().getRenderingMode() == RenderingMode.NEITHER ? 1 : 0;
        String text = text(position);
        if (text == null || slanting(position.getTextMatrix()) || cutOff(position.getTextMatrix())) {
            return;
        }
        float left = position.getXDirAdj();
        float right = left + position.getWidthDirAdj();
        if (Float.isFinite(left) && Float.isFinite(right) && Float.isFinite(position.getYDirAdj())) {
            byTurn.get(Math.round(position.getDir() / QUARTER) % byTurn.size())
                    .add(new Glyph(
                            text, left, right, position.getYDirAdj(), size(position), position.getWidthOfSpace()));
        }
    }

    /** What a letter says: joined letters one by one, and those that a font only names by its name. */
    private static @Nullable String text(TextPosition position) {
        String text = position.getUnicode();
        if (text == null || text.isEmpty()) {
            return null;
        }
        char first = text.charAt(0);
        boolean separator = first >= '\u001c' && first <= '\u001f'; // blanks to Java, and codes of ligatures to fonts
        if (separator || (Character.isISOControl(first) && !Character.isWhitespace(first))) {
            return named(position);
        }
        if (first == '\u2212' || first == '\u2010' || first == '\u2011') {
            return "-"; // the signs for minus and hyphens, which mean what the plain one does
        }
        return first >= '\ufb00' && first <= '\ufb06' ? Normalizer.normalize(text, Normalizer.Form.NFKC) : text;
    }

    /** By the names of the parts of a ligature, such as f_i. */
    private static @Nullable String named(TextPosition position) {
        if (!(position.getFont() instanceof PDSimpleFont font) || font.getEncoding() == null) {
            return null;
        }
        String name = font.getEncoding().getName(position.getCharacterCodes()[0]);
        int dot = name.indexOf('.');
        StringBuilder letters = new StringBuilder();
        for (String part : (dot > 0 ? name.substring(0, dot) : name).split("_", -1)) {
            String letter = GlyphList.getAdobeGlyphList().toUnicode(part);
            if (letter == null) {
                return null;
            }
            letters.append(letter);
        }
        return letters.toString();
    }

    private static float size(TextPosition position) {
        float size = position.getFont() instanceof PDType3Font
                ? position.getHeightDir() / CAPITAL
                : Math.abs(position.getYScale());
        return Float.isFinite(size) ? Math.max(size, 1) : 1;
    }

    /** Whether a letter lies beside the page, as where a sheet of artwork is cut into pages that each show a part of it. */
    private boolean cutOff(Matrix matrix) {
        PDRectangle shown = getCurrentPage().getCropBox();
        return matrix.getTranslateX() < -BESIDE
                || matrix.getTranslateY() < -BESIDE
                || matrix.getTranslateX() > shown.getWidth() + BESIDE
                || matrix.getTranslateY() > shown.getHeight() + BESIDE;
    }

    private static boolean slanting(Matrix matrix) {
        double angle = Math.toDegrees(Math.atan2(matrix.getShearY(), matrix.getScaleX()));
        double off = Math.abs(angle - QUARTER * Math.rint(angle / QUARTER));
        return off > LEAN;
    }

    @Override
    protected void writePage() {
        int most = getCurrentPage().getRotation() / QUARTER;
        for (int turn = 0; turn < byTurn.size(); turn++) {
            most = byTurn.get(turn).size() > byTurn.get(most).size() ? turn : most;
        }
        pages.set(
                getCurrentPageNo() - 1, new Letters(List.copyOf(byTurn.get(most)), most * QUARTER, unseen > SEEN * of));
        byTurn.forEach(List::clear);
        unseen = 0;
        of = 0;
    }
}
