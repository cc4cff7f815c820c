package plumbrow.app.papers;

import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.shelf.FiledPaper;

/** A file, told apart by what stands on it. */
public sealed interface ReadPaper {
    /** What the book files it under; its number is 0 until the book gives one. */
    FiledPaper filed();

    /** A safety sheet. */
    record Sheet(FiledPaper filed, SafetySheet sheet) implements ReadPaper {}

    /** A label. */
    record Label(FiledPaper filed, LabelPaper label) implements ReadPaper {}

    /** A paper without any text, as when it was scanned. */
    record Scan(FiledPaper filed) implements ReadPaper {}
}
