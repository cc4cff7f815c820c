package plumbrow.documents.reading;

import java.nio.file.Path;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.paper.PaperReader;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.part.SheetReading;
import plumbrow.documents.sheet.section.Sections;

/** Reads safety data sheets in this very process; for files from outside see {@code plumbrow.documents.apart}. */
public final class SheetReader {
    private SheetReader() {}

    /**
     * Reads a file from disk.
     *
     * @throws PaperTrouble if it can't be read as paper
     */
    public static SafetySheet read(Path file) {
        return read(PaperReader.read(file, PaperLimits.USUAL, Sections::isHeading));
    }

    /**
     * Reads the bytes of a file.
     *
     * @throws PaperTrouble if they can't be read as paper
     */
    public static SafetySheet read(byte[] file, String name) {
        return read(PaperReader.read(file, name, PaperLimits.USUAL, Sections::isHeading));
    }

    /** What the paper says. */
    public static SafetySheet read(Paper paper) {
        return SheetReading.of(paper);
    }
}
