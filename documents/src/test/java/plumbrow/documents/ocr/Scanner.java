package plumbrow.documents.ocr;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Makes scans of papers: pictures of their pages, with the noise and the dots an inch of scanners and faxes (ITU-T T.4). */
public final class Scanner {
    private static final float POINTS_PER_INCH = 72;

    /**
     * How a page is scanned.
     *
     * @param across, down dots an inch
     * @param noise share of the dots that are turned over; of a grey scan the spread of the noise among 256 shades is 100 times it
     * @param twoTone whether dots are black or white, as of a fax
     */
    public record Grade(int across, int down, double noise, boolean twoTone) {
        public static final Grade OFFICE = new Grade(300, 300, .1, false);
        public static final Grade FAX = new Grade(204, 98, .002, true);
        public static final Grade FINE_FAX = new Grade(204, 196, .001, true);
    }

    private Scanner() {}

    /** The pages of a PDF as a PDF of pictures; of a long one the first. */
    public static byte[] scan(byte[] pdf, Grade grade, int mostPages, long seed) {
        return scan(pdf, grade, mostPages, seed, "");
    }

    /** The same with text laid over the first page that nobody sees. */
    public static byte[] scan(byte[] pdf, Grade grade, int mostPages, long seed, String hidden) {
        Random random = new Random(seed);
        try (PDDocument from = Loader.loadPDF(pdf);
                PDDocument to = new PDDocument()) {
            PDFRenderer renderer = new PDFRenderer(from);
            for (int i = 0; i < Math.min(mostPages, from.getNumberOfPages()); i++) {
                PDRectangle size = from.getPage(i).getCropBox();
                BufferedImage drawn = renderer.renderImageWithDPI(i, 300, ImageType.GRAY);
                int width = Math.round(size.getWidth() / POINTS_PER_INCH * grade.across);
                int height = Math.round(size.getHeight() / POINTS_PER_INCH * grade.down);
                PDImageXObject picture =
                        LosslessFactory.createFromImage(to, noisy(resized(drawn, width, height), grade, random));
                PDPage page = new PDPage(new PDRectangle(size.getWidth(), size.getHeight()));
                to.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(to, page)) {
                    content.drawImage(picture, 0, 0, size.getWidth(), size.getHeight());
                    if (i == 0 && !hidden.isEmpty()) {
                        write(content, hidden, RenderingMode.NEITHER);
                    }
                }
            }
            return saved(to);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** A page of plain text as PDF, a line below the other. */
    public static byte[] page(String text) {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.LETTER);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                write(content, text, RenderingMode.FILL);
            }
            return saved(document);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static void write(PDPageContentStream content, String text, RenderingMode mode) throws IOException {
        content.beginText();
        content.setFont(new PDType1Font(FontName.HELVETICA), 10);
        content.setRenderingMode(mode);
        content.setLeading(14);
        content.newLineAtOffset(60, 720);
        for (String line : text.split("\n", -1)) {
            int x = 0;
            for (String cell : line.split("\t", -1)) {
                content.newLineAtOffset(x, 0);
                content.showText(cell);
                x = 170;
            }
            content.newLineAtOffset(-170 * (line.split("\t", -1).length - 1), -14);
        }
        content.endText();
    }

    private static byte[] saved(PDDocument document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    private static BufferedImage resized(BufferedImage drawn, int width, int height) {
        BufferedImage resized = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = resized.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(drawn, 0, 0, width, height, null);
        graphics.dispose();
        return resized;
    }

    private static BufferedImage noisy(BufferedImage page, Grade grade, Random random) {
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                int shade = page.getRaster().getSample(x, y, 0);
                if (grade.twoTone) {
                    shade = (shade > 140) != (random.nextDouble() < grade.noise) ? 255 : 0;
                } else {
                    shade = (int) Math.max(0, Math.min(255, shade + random.nextGaussian() * grade.noise * 100));
                }
                page.getRaster().setSample(x, y, 0, shade);
            }
        }
        return page;
    }
}
