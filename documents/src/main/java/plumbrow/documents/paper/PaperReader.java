package plumbrow.documents.paper;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Reads a PDF, a plain text or an HTML page, told apart by what is in the file and not by its name. */
public final class PaperReader {
    private static final int LOOKED_AT = 1024;
    private static final Charset OLD_WESTERN = Charset.forName("windows-1252");

    private PaperReader() {}

    /**
     * Reads a file from disk.
     *
     * @param landmark whether a line can only begin matter of its own, such as a section's heading: it tells columns of text
     *     from a table
     * @throws PaperTrouble if it is missing, too large, broken, locked or of another kind
     */
    public static Paper read(Path file, PaperLimits limits, Predicate<String> landmark) {
        return read(file, limits, landmark, null);
    }

    /**
     * The same, with pages that are pictures made out by OCR.
     *
     * @param optical makes them out; null where pictures are left alone
     */
    public static Paper read(
            Path file, PaperLimits limits, Predicate<String> landmark, @Nullable OpticalReader optical) {
        check(file, limits);
        String name = String.valueOf(file.getFileName());
        try {
            return read(Files.readAllBytes(file), name, limits, landmark, optical);
        } catch (IOException unreadable) {
            throw new PaperTrouble(name + " could not be read from the disk.", unreadable);
        }
    }

    /**
     * Looks at a file from outside.
     *
     * @throws PaperTrouble if it is missing, no file, or too large
     */
    public static void check(Path file, PaperLimits limits) {
        if (Files.isDirectory(file)) {
            throw new PaperTrouble(file + " is a folder; expected a file.");
        }
        if (!Files.isRegularFile(file)) {
            throw new PaperTrouble("There is no file " + file + ".");
        }
        try {
            long bytes = Files.size(file);
            if (bytes > limits.fileBytes()) {
                throw tooLarge(String.valueOf(file.getFileName()), bytes, limits);
            }
        } catch (IOException unreadable) {
            throw new PaperTrouble(file.getFileName() + " could not be read from the disk.", unreadable);
        }
    }

    /**
     * Reads the bytes of a file.
     *
     * @param name what the file is called in a sentence about it
     * @throws PaperTrouble as above
     */
    public static Paper read(byte[] file, String name, PaperLimits limits, Predicate<String> landmark) {
        return read(file, name, limits, landmark, null);
    }

    private static Paper read(
            byte[] file, String name, PaperLimits limits, Predicate<String> landmark, @Nullable OpticalReader optical) {
        if (file.length == 0) {
            throw new PaperTrouble(name + " is empty; expected a PDF, a text or a web page.");
        }
        if (file.length > limits.fileBytes()) {
            throw tooLarge(name, file.length, limits);
        }
        String start = new String(file, 0, Math.min(file.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
        if (start.contains("%PDF-")) {
            return PdfPaper.read(file, name, limits, landmark, optical);
        }
        if (binary(file, start)) {
            throw new PaperTrouble(name + " is a file of another kind; expected a PDF, a text or a web page.");
        }
        String text = text(file);
        if (text.length() > limits.glyphs()) {
            throw new PaperTrouble(
                    name + " holds more than " + limits.glyphs() + " letters; expected one safety sheet or label.");
        }
        String lower = start.toLowerCase(Locale.ROOT);
        boolean html = lower.contains("<html") || lower.contains("<!doctype html") || lower.contains("<body");
        try {
            Paper paper = html ? HtmlPaper.read(text, landmark) : TextPaper.read(text, landmark);
            if (paper.pages().size() > limits.pages()) {
                throw new PaperTrouble(
                        name + " has " + paper.pages().size() + " pages; expected at most " + limits.pages() + ".");
            }
            return paper;
        } catch (StackOverflowError nested) {
            throw new PaperTrouble(name + " is nested too deep to be read; expected a plain web page.", nested);
        }
    }

    private static PaperTrouble tooLarge(String name, long bytes, PaperLimits limits) {
        return new PaperTrouble(name + " has " + (bytes >> 20) + " MB; expected at most " + (limits.fileBytes() >> 20)
                + " MB for a safety sheet or label.");
    }

    private static boolean binary(byte[] file, String start) {
        boolean wide = file.length > 1 && (file[0] & 0xff) + (file[1] & 0xff) == 0xff + 0xfe;
        return !wide && (start.indexOf('\0') >= 0 || start.startsWith("PK\3\4") || start.startsWith("\211PNG"));
    }

    private static String text(byte[] file) {
        if (file.length > 1 && (file[0] & 0xff) + (file[1] & 0xff) == 0xff + 0xfe) {
            return new String(file, StandardCharsets.UTF_16);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file))
                    .toString();
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (CharacterCodingException older) {
            return new String(file, OLD_WESTERN);
        }
    }
}
