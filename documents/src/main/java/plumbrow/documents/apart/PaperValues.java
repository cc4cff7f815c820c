package plumbrow.documents.apart;

import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.sheet.SafetySheet;

/** What was read on a file in the other process. */
public sealed interface PaperValues {
    /** As a safety sheet; of a page without text too, since nobody can tell. */
    record Sheet(SafetySheet sheet) implements PaperValues {}

    /** As a label. */
    record Label(LabelPaper label) implements PaperValues {}
}
