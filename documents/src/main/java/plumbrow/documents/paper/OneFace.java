package plumbrow.documents.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Stands in for every face that a PDF names and does not bring along.
 *
 * The library would look through the machine's own fonts, which takes seconds, gives other pictures on other machines, and
 * leaves a file in the person's home.
 */
final class OneFace implements FontMapper {
    private final TrueTypeFont face = load();

    private static TrueTypeFont load() {
        try (InputStream in = Objects.requireNonNull(
                OneFace.class.getResourceAsStream("/liberation/LiberationSans-Regular.ttf"), "the face is missing")) {
            return new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(face, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(face, true);
    }

    @Override
    public CIDFontMapping getCIDFont(
            String name, @Nullable PDFontDescriptor descriptor, @Nullable PDCIDSystemInfo system) {
        return new CIDFontMapping(null, face, true);
    }
}
