package plumbrow.app.papers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.apart.ApartReader;
import plumbrow.documents.apart.PaperValues;
import plumbrow.documents.card.RegistrationNumber;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.shelf.FiledPaper;

/**
 * Reads files and tells what sort of paper each is. Every file is opened in a process apart, with its limits of time and
 * memory, and drawn in one too.
 */
public final class PaperDesk implements AutoCloseable {
    /** Fewer sections than that stand on letters and bills too. */
    private static final int FEWEST_SECTIONS = 3;

    private final ApartReader reader = new ApartReader();
    /** A process of its own, so that nobody waits for a page while a folder is read. */
    private final ApartReader drawer = new ApartReader();

    /**
     * Reads a file from disk.
     *
     * @throws PaperTrouble if it can't be read, or is neither a safety sheet nor a label
     */
    public ReadPaper read(Path file) {
        String name = plainName(String.valueOf(file.getFileName()));
        PaperValues values = reader.values(file, null);
        if (values instanceof PaperValues.Label read) {
            return new ReadPaper.Label(filed(name, read), read.label(), read.byOcr());
        }
        PaperValues.Sheet readSheet = (PaperValues.Sheet) values;
        SafetySheet sheet = readSheet.sheet();
        boolean poor = !readSheet.byOcr().isEmpty() && sheet.sections().size() < FEWEST_SECTIONS;
        if (sheet.needsTyping() || poor) {
            return new ReadPaper.Scan(
                    new FiledPaper(0, FiledPaper.Kind.UNKNOWN, name, "", "", null, sheet.pages(), true),
                    sheet.notices());
        }
        if (sheet.sections().size() >= FEWEST_SECTIONS) {
            return new ReadPaper.Sheet(filed(name, readSheet), sheet, readSheet.byOcr());
        }
        throw new PaperTrouble(name
                + " reads neither as a safety sheet (too few of its sixteen sections) nor as a label (no directions for use,"
                + " no agricultural use requirements).");
    }

    /** Reads the bytes of a file, which leaves nothing on the disk. */
    public ReadPaper read(byte[] content, String name) {
        return onDisk(content, name, this::read);
    }

    /**
     * Draws a page of a PDF, likewise.
     *
     * @param page from 1
     * @param longestPx longest side of the picture [px]
     * @throws PaperTrouble if there is no such page, or it can't be drawn
     */
    public PagePicture.Drawn picture(byte[] content, String name, int page, int longestPx) {
        return onDisk(content, name, file -> drawer.picture(file, page, longestPx));
    }

    private static <T> T onDisk(byte[] content, String name, Function<Path, T> use) {
        try {
            Path folder = Files.createTempDirectory("plumbrow-paper");
            Path file = folder.resolve(plainName(name));
            try {
                Files.write(file, content);
                return use.apply(file);
            } finally {
                Files.deleteIfExists(file);
                Files.deleteIfExists(folder);
            }
        } catch (IOException full) {
            throw new PaperTrouble(name + " could not be read: this machine has no room for it.", full);
        }
    }

    @Override
    public void close() {
        reader.close();
        drawer.close();
    }

    /** The last part of a name, without signs that a disk might refuse. */
    public static String plainName(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        String plain = last.replaceAll("[^\\p{L}\\p{N} ._()+-]", "_").strip().replaceFirst("^[+-]", "_");
        String shorter = plain.length() > 120 ? plain.substring(plain.length() - 120) : plain;
        return shorter.isEmpty() || shorter.matches("\\.+") ? "paper" : shorter;
    }

    /** What an OCR made out files no paper: whoever confirms it does. */
    private static FiledPaper filed(String name, PaperValues.Sheet read) {
        SafetySheet sheet = read.sheet();
        return new FiledPaper(
                0,
                FiledPaper.Kind.SAFETY_SHEET,
                name,
                said(sheet.of(ValueKind.PRODUCT_NAME), read.byOcr()),
                number(said(sheet.of(ValueKind.REGISTRATION_NUMBER), read.byOcr())),
                dated(sheet, read.byOcr()),
                sheet.pages(),
                sheet.needsTyping());
    }

    private static @Nullable LocalDate dated(SafetySheet sheet, List<Integer> byOcr) {
        for (ValueKind kind : List.of(ValueKind.REVISION_DATE, ValueKind.ISSUE_DATE)) {
            if (sheet.of(kind) instanceof Reading.Stated stated
                    && stated.content() instanceof Content.Day day
                    && !byOcr.contains(stated.quote().page())) {
                return day.date();
            }
        }
        return null;
    }

    private static FiledPaper filed(String name, PaperValues.Label read) {
        LabelPaper label = read.label();
        LocalDate dated = label.of(LabelKind.LABEL_DATE) instanceof LabelReading.Stated stated
                        && stated.content() instanceof LabelContent.Day day
                        && !read.byOcr().contains(stated.quote().page())
                ? day.date()
                : null;
        return new FiledPaper(
                0,
                FiledPaper.Kind.LABEL,
                name,
                said(label.of(LabelKind.PRODUCT_NAME), read.byOcr()),
                number(said(label.of(LabelKind.REGISTRATION), read.byOcr())),
                dated,
                label.pages(),
                label.needsTyping());
    }

    private static String said(Reading reading, List<Integer> byOcr) {
        return reading instanceof Reading.Stated stated
                        && !byOcr.contains(stated.quote().page())
                ? stated.words()
                : "";
    }

    private static String said(LabelReading reading, List<Integer> byOcr) {
        return reading instanceof LabelReading.Stated stated
                        && !byOcr.contains(stated.quote().page())
                ? stated.words()
                : "";
    }

    private static String number(String registration) {
        return registration.isEmpty() ? "" : RegistrationNumber.plain(registration);
    }
}
