package plumbrow.documents.reading;

import java.nio.file.Path;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.part.LabelParts;
import plumbrow.documents.label.text.Topics;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.paper.PaperReader;
import plumbrow.documents.paper.PaperTrouble;

/** Reads pesticide labels in this very process. */
public final class LabelReader {
    private LabelReader() {}

    /**
     * Reads a file from disk.
     *
     * @throws PaperTrouble if it can't be read as paper
     */
    public static LabelPaper read(Path file) {
        return read(PaperReader.read(file, PaperLimits.USUAL, Topics::isLandmark));
    }

    /**
     * Reads the bytes of a file.
     *
     * @throws PaperTrouble if they can't be read as paper
     */
    public static LabelPaper read(byte[] file, String name) {
        return read(PaperReader.read(file, name, PaperLimits.USUAL, Topics::isLandmark));
    }

    /** What the paper says. */
    public static LabelPaper read(Paper paper) {
        return LabelParts.read(paper);
    }
}
