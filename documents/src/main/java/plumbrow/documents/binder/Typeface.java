package plumbrow.documents.binder;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The face the binder is set in: Liberation Sans, under the SIL Open Font License 1.1, embedded in each PDF. */
final class Typeface {
    static final String FAMILY = "Liberation Sans";

    /** Printed for a character that the face does not hold, such as a picture sign. */
    static final String MISSING = "□";

    private static final String REGULAR = "/liberation/LiberationSans-Regular.ttf";
    private static final String BOLD = "/liberation/LiberationSans-Bold.ttf";

    private static final Set<FSFontUseCase> TEXT_AND_PICTURES = Set.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);

    private Typeface() {}

    static void embed(PdfRendererBuilder builder) {
        builder.useFont(() -> open(REGULAR), FAMILY, 400, FontStyle.NORMAL, true, TEXT_AND_PICTURES);
        builder.useFont(() -> open(BOLD), FAMILY, 700, FontStyle.NORMAL, true, TEXT_AND_PICTURES);
        builder.useReplacementText(MISSING);
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
            try (InputStream in = open(REGULAR);
                    TrueTypeFont font = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in))) {
                return font.getUnicodeCmapLookup();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
