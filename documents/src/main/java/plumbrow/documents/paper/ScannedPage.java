package plumbrow.documents.paper;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.jspecify.annotations.Nullable;

/**
 * A page that is a picture, made out by OCR.
 *
 * It is read twice, at two sizes. A word that holds a number is in doubt where its confidence is below 80, where the two readings
 * differ, and where a point may be lost between its digits. Every word is on a page scanned more coarsely than 150 dots an inch,
 * as by a fax of standard grade (204 by 98, ITU-T T.4): there "42.2" reads "422", and letters are guessed.
 */
final class ScannedPage {
    private static final double POINTS_PER_INCH = 72;
    private static final int FINE = 300;
    private static final int PLAIN = 200;
    private static final int COARSE = 150;
    private static final int LONGEST_PX = 4200;
    private static final double SURE = 80;
    private static final double NOISE = 25;
    private static final double HARDLY = 50;
    private static final Pattern FRAME = Pattern.compile("[\\[\\]{}|_~]+");
    private static final double CAPITAL = .72;
    private static final double SMALL_LETTER = .53;
    private static final double BLANK = .28;
    private static final String HANGING = ".*[gjpqy,;()\\[\\]{}|/Q$§].*";
    private static final String TALL = ".*[\\p{Lu}\\dbdfhklt!?].*";

    private final List<Glyph> glyphs = new ArrayList<>();
    private final List<Optical.Doubt> doubts = new ArrayList<>();
    private boolean empty;

    private ScannedPage() {}

    List<Glyph> glyphs() {
        return glyphs;
    }

    List<Optical.Doubt> doubts() {
        return doubts;
    }

    /** Whether nothing stands on it. */
    boolean isEmpty() {
        return empty;
    }

    /**
     * Makes out a page.
     *
     * @param number from 1
     * @throws PaperTrouble if the reader can't, or not in time
     */
    static ScannedPage read(PDDocument document, int number, OpticalReader reader) throws IOException {
        PDPage page = document.getPage(number - 1);
        int dots = dots(page);
        PDFRenderer renderer = new PDFRenderer(document);
        renderer.setSubsamplingAllowed(true);
        ScannedPage scanned = new ScannedPage();
        BufferedImage drawn = renderer.renderImageWithDPI(number - 1, dots, ImageType.GRAY);
        Ink ink = new Ink(drawn);
        if (ink.isEmpty()) {
            scanned.empty = true;
            return scanned;
        }
        List<OpticalWord> words = reader.words(drawn, dots);
        int plain = dots * PLAIN / FINE;
        reader.page(number);
        List<OpticalWord> again = words.stream().noneMatch(OpticalWord::holdsNumber)
                ? List.of()
                : reader.words(renderer.renderImageWithDPI(number - 1, plain, ImageType.GRAY), plain).stream()
                        .map(word -> word.scaled((double) dots / plain))
                        .toList();
        boolean coarse = coarse(page);
        double toPoints = POINTS_PER_INCH / dots;
        for (List<OpticalWord> line : lines(words)) {
            scanned.place(line, toPoints);
        }
        for (OpticalWord word : words) {
            if (coarse || word.holdsNumber()) {
                String why = doubt(word, again, ink, coarse);
                if (!why.isEmpty()) {
                    scanned.doubts.add(new Optical.Doubt(number, box(word, toPoints), word.text(), why));
                }
            }
        }
        return scanned;
    }

    /**
     * What is in doubt of a page whose words another machine made out and laid over its picture: the numbers that this one does
     * not make out likewise.
     *
     * @param reader null where there is none: then every number is
     * @param own the words of the other machine
     */
    static List<Optical.Doubt> against(PDDocument document, int number, @Nullable OpticalReader reader, List<Row> own)
            throws IOException {
        int dots = dots(document.getPage(number - 1));
        List<OpticalWord> words = List.of();
        if (reader != null) {
            reader.page(number);
            PDFRenderer renderer = new PDFRenderer(document);
            renderer.setSubsamplingAllowed(true);
            words = reader.words(renderer.renderImageWithDPI(number - 1, dots, ImageType.GRAY), dots);
        }
        double toDots = dots / POINTS_PER_INCH;
        List<Optical.Doubt> doubts = new ArrayList<>();
        for (Row row : own) {
            for (Word word :
                    row.cells().stream().flatMap(cell -> cell.words().stream()).toList()) {
                OpticalWord printed = printed(word, toDots);
                boolean alike = words.stream()
                        .anyMatch(made ->
                                printed.overlaps(made) && bare(made.text()).equals(bare(word.text())));
                if (printed.holdsNumber() && !alike) {
                    doubts.add(new Optical.Doubt(
                            number,
                            word.box(),
                            word.text(),
                            reader == null
                                    ? "it was made out by another machine, and nobody knows how surely"
                                    : "read a second time it says something else"));
                }
            }
        }
        return doubts;
    }

    private static OpticalWord printed(Word word, double toDots) {
        Box box = word.box();
        return new OpticalWord(
                0,
                word.text(),
                (int) (box.left() * toDots),
                (int) (box.top() * toDots),
                (int) (box.right() * toDots),
                (int) (box.bottom() * toDots),
                0);
    }

    /** How finely a page is drawn [dots an inch]. */
    private static int dots(PDPage page) {
        double longest =
                Math.max(page.getCropBox().getWidth(), page.getCropBox().getHeight());
        return (int) Math.max(72, Math.min(FINE, LONGEST_PX * POINTS_PER_INCH / Math.max(1, longest)));
    }

    private static String doubt(OpticalWord word, List<OpticalWord> again, Ink ink, boolean coarse) {
        if (coarse) {
            return "the page is scanned as coarsely as by a fax, where letters run together and points are lost";
        }
        if (word.confidence() < SURE) {
            return "it is blurred";
        }
        boolean alike = again.stream()
                .anyMatch(other -> word.overlaps(other) && bare(other.text()).equals(bare(word.text())));
        if (!alike) {
            return "read a second time it says something else";
        }
        return ink.mayLackPoint(word) ? "a point may be lost between its digits" : "";
    }

    /** Without stops and quotes at its ends: these say nothing about the number. */
    private static String bare(String text) {
        return text.replaceAll("^[\\p{Punct}‘’“”—–•]+(?=.)|(?<=.)[.,;:'\"‘’“”—–•_]+$", "");
    }

    private static Box box(OpticalWord word, double toPoints) {
        return new Box(
                word.left() * toPoints, word.top() * toPoints, word.right() * toPoints, word.bottom() * toPoints);
    }

    private static List<List<OpticalWord>> lines(List<OpticalWord> words) {
        List<List<OpticalWord>> lines = new ArrayList<>();
        int at = Integer.MIN_VALUE;
        for (OpticalWord word : words) {
            if (isNoise(word)) {
                continue;
            }
            if (word.line() != at) {
                lines.add(new ArrayList<>());
                at = word.line();
            }
            List<OpticalWord> line = lines.get(lines.size() - 1);
            line.add(
                    !line.isEmpty() && numbersSection(line.get(line.size() - 1), word)
                            ? word.saying(word.text().replace(';', ':'))
                            : word);
        }
        return lines;
    }

    /** What frames and dirt leave: signs that say nothing, and a letter or two that nobody is sure of. */
    private static boolean isNoise(OpticalWord word) {
        boolean says = word.text().chars().anyMatch(Character::isLetterOrDigit);
        return says
                ? word.confidence() < HARDLY && word.text().length() <= 2 && !word.holdsNumber()
                : word.confidence() < NOISE || FRAME.matcher(word.text()).matches();
    }

    /** The colon after the number of a section, read as a semicolon. */
    private static boolean numbersSection(OpticalWord before, OpticalWord word) {
        return before.text().equalsIgnoreCase("section") && word.text().matches("\\d{1,2};");
    }

    /** The letters of a line, each an even share of its word, on one baseline. */
    private void place(List<OpticalWord> line, double toPoints) {
        double base = middle(line.stream()
                .map(word -> word.text().matches(HANGING)
                        ? word.bottom() - .2 * (word.bottom() - word.top())
                        : word.bottom())
                .toList());
        double size = middle(line.stream().map(ScannedPage::size).toList());
        for (OpticalWord word : line) {
            double each = (double) (word.right() - word.left()) / word.text().length();
            for (int i = 0; i < word.text().length(); i++) {
                glyphs.add(new Glyph(
                        word.text().substring(i, i + 1),
                        (float) ((word.left() + i * each) * toPoints),
                        (float) ((word.left() + (i + 1) * each) * toPoints),
                        (float) (base * toPoints),
                        (float) Math.max(4, size * toPoints),
                        (float) (BLANK * size * toPoints)));
            }
        }
    }

    /** The size of a word's type, by how tall its letters are. */
    private static double size(OpticalWord word) {
        double tall = word.bottom() - word.top();
        boolean hangs = word.text().matches(HANGING);
        boolean rises = word.text().matches(TALL);
        return tall / (rises ? hangs ? CAPITAL + .2 : CAPITAL : hangs ? SMALL_LETTER + .2 : SMALL_LETTER);
    }

    private static double middle(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }

    /** Whether the largest picture on the page has fewer dots an inch than numbers need, either way. */
    private static boolean coarse(PDPage page) throws IOException {
        PDResources resources = page.getResources();
        double most = 0;
        double finest = Double.MAX_VALUE;
        if (resources == null) {
            return false;
        }
        double across = page.getCropBox().getWidth() / POINTS_PER_INCH;
        double down = page.getCropBox().getHeight() / POINTS_PER_INCH;
        for (COSName name : resources.getXObjectNames()) {
            if (resources.isImageXObject(name) && resources.getXObject(name) instanceof PDImageXObject image) {
                double dots = (double) image.getWidth() * image.getHeight();
                if (dots > most) {
                    most = dots;
                    boolean turned = (image.getWidth() > image.getHeight()) != (across > down);
                    finest = turned
                            ? Math.min(image.getWidth() / down, image.getHeight() / across)
                            : Math.min(image.getWidth() / across, image.getHeight() / down);
                }
            }
        }
        // A small picture on a page of drawn letters, such as a brand's mark, says nothing about the letters.
        return most > 0 && finest < COARSE && !small(most, across, down);
    }

    private static boolean small(double dots, double across, double down) {
        return dots < 60 * across * 60 * down;
    }
}
