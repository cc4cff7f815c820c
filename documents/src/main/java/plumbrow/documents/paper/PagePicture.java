package plumbrow.documents.paper;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A page of a PDF as a picture, to hold what was read against what stands there. */
public final class PagePicture {
    private static final Logger LOG = LoggerFactory.getLogger(PagePicture.class);
    private static final double POINTS_PER_INCH = 72;

    private PagePicture() {}

    /**
     * A page drawn.
     *
     * @param png the picture
     * @param width, height of the page in points, as the boxes of words are
     */
    @SuppressWarnings("ArrayRecordComponent") // drawn once and shown
    public record Drawn(byte[] png, double width, double height) {}

    /**
     * Draws a page as PNG, turned so that its text stands upright.
     *
     * @param number from 1
     * @param longestPx longest side of the picture [px]; a page is never drawn at more than 144 dots an inch
     * @throws PaperTrouble if there is no such page, or it can't be drawn
     */
    public static Drawn draw(byte[] pdf, String name, int number, int longestPx) {
        try (PDDocument document = Loader.loadPDF(
                new RandomAccessReadBuffer(pdf), "", null, null, IOUtils.createMemoryOnlyStreamCache())) {
            if (number < 1 || number > document.getNumberOfPages()) {
                throw new PaperTrouble(
                        name + " has " + document.getNumberOfPages() + " pages and no page " + number + ".");
            }
            PDPage page = document.getPage(number - 1);
            page.setRotation(PdfGlyphs.turn(document, number, PaperLimits.USUAL.glyphs()));
            double longest =
                    Math.max(page.getCropBox().getWidth(), page.getCropBox().getHeight());
            double scale = Math.min(144 / POINTS_PER_INCH, longestPx / Math.max(1, longest));
            PDFRenderer renderer = new PDFRenderer(document);
            renderer.setSubsamplingAllowed(true);
            BufferedImage picture = renderer.renderImage(number - 1, (float) scale, ImageType.RGB);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(picture, "png", out);
            boolean turned = page.getRotation() % 180 != 0;
            double width = page.getCropBox().getWidth();
            double height = page.getCropBox().getHeight();
            return new Drawn(out.toByteArray(), turned ? height : width, turned ? width : height);
        } catch (PaperTrouble said) {
            throw said;
        } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError broken) {
            LOG.debug("page {} of {} could not be drawn", number, name, broken);
            throw new PaperTrouble("Page " + number + " of " + name + " can't be drawn; open the file itself.", broken);
        }
    }
}
