package plumbrow.app.papers;

import java.util.List;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.shelf.FiledPaper;

/** A file, told apart by what stands on it. */
public sealed interface ReadPaper {
    /** What the book files it under; its number is 0 until the book gives one. */
    FiledPaper filed();

    /** Numbers of the pages that were made out by OCR: what stands there counts once a person has confirmed it. */
    List<Integer> byOcr();

    /** What a person should know about the file or the reading, one sentence each. */
    List<String> notices();

    /** A safety sheet. */
    record Sheet(FiledPaper filed, SafetySheet sheet, List<Integer> byOcr) implements ReadPaper {
        @Override
        public List<String> notices() {
            return sheet.notices();
        }
    }

    /** A label. */
    record Label(FiledPaper filed, LabelPaper label, List<Integer> byOcr) implements ReadPaper {
        @Override
        public List<String> notices() {
            return label.notices();
        }
    }

    /** A paper without any text, as when it was scanned and this machine has no OCR. */
    record Scan(FiledPaper filed, List<String> notices) implements ReadPaper {
        @Override
        public List<Integer> byOcr() {
            return List.of();
        }
    }
}
