package plumbrow.documents.paper;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Takes the letters of each page out of a PDF, as they are placed. */
final class PdfGlyphs extends PDFTextStripper {
    private final List<List<Glyph>> pages = new ArrayList<>();
    private final int most;
    private List<Glyph> current = new ArrayList<>();
    private int count;

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

    /** The letters of each page. */
    static List<List<Glyph>> of(PDDocument document, int most) throws IOException {
        PdfGlyphs glyphs = new PdfGlyphs(most);
        glyphs.setSuppressDuplicateOverlappingText(false);
        for (int i = 0; i < document.getNumberOfPages(); i++) {
            glyphs.pages.add(List.of()); // the library passes over pages without any content
        }
        glyphs.writeText(document, Writer.nullWriter());
        return glyphs.pages;
    }

    @Override
    protected void processTextPosition(TextPosition position) {
        if (++count > most) {
            throw new TooMany();
        }
        String text = position.getUnicode();
        if (text == null || position.getDir() != 0) {
            return; // turned text is a watermark or a note at the edge
        }
        float left = position.getXDirAdj();
        float right = left + position.getWidthDirAdj();
        float size = Math.max(position.getFontSizeInPt(), 1);
        if (Float.isFinite(left) && Float.isFinite(right) && Float.isFinite(position.getYDirAdj())) {
            current.add(new Glyph(text, left, right, position.getYDirAdj(), size, position.getWidthOfSpace()));
        }
    }

    @Override
    protected void writePage() {
        pages.set(getCurrentPageNo() - 1, current);
        current = new ArrayList<>();
    }
}
