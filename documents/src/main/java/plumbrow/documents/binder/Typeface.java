package plumbrow.documents.binder;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The face the binder is set in: Liberation Sans, under the SIL Open Font License 1.1, embedded in each PDF. */
final class Typeface {
    static final String FAMILY = "Liberation Sans";

    /** Printed for a character that the face does not hold, such as a picture sign. */
    static final String MISSING = "□";

    private static final String REGULAR = "/liberation/LiberationSans-Regular.ttf";
    private static final String BOLD = "/liberation/LiberationSans-Bold.ttf";

    private Typeface() {}

    /**
     * Makes the face known to the writer, for the document it writes into. Ligatures and other letter forms stay off:
     * they cost time, and letters printed one by one are found again by whoever searches the PDF.
     */
    static void embed(PdfRendererBuilder builder, PDDocument document) throws IOException {
        embed(builder, document, REGULAR, 400);
        embed(builder, document, BOLD, 700);
        builder.useReplacementText(MISSING);
    }

    private static void embed(PdfRendererBuilder builder, PDDocument document, String resource, int weight)
            throws IOException {
        TrueTypeFont font = parse(resource);
        font.setEnableGsub(false);
        PDFont embedded = PDType0Font.load(document, font, true);
        builder.useFont(new PDFontSupplier(embedded), FAMILY, weight, FontStyle.NORMAL, true);
        builder.useFont(() -> open(resource), FAMILY, weight, FontStyle.NORMAL, true, Set.of(FSFontUseCase.SVG));
    }

    private static TrueTypeFont parse(String resource) throws IOException {
        try (InputStream in = open(resource)) {
            return new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
        }
    }

    /** Replaces what neither weight of the face can print. */
    static String printable(String text) {
        StringBuilder printable = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            if (point == '\n' || point == '\t' || point == '\r' || Glyphs.REGULAR_GLYPHS.getGlyphId(point) != 0) {
                printable.appendCodePoint(point);
            } else {
                printable.append(MISSING);
            }
        });
        return printable.toString();
    }

    private static InputStream open(String resource) {
        InputStream stream = Typeface.class.getResourceAsStream(resource);
        if (stream == null) {
            throw new IllegalStateException("the typeface " + resource + " is missing from this installation");
        }
        return stream;
    }

    /** Read once, when first asked for. */
    private static final class Glyphs {
        static final CmapLookup REGULAR_GLYPHS = lookup();

        private static CmapLookup lookup() {
            try (TrueTypeFont font = parse(REGULAR)) {
                return font.getUnicodeCmapLookup();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
