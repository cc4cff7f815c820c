package plumbrow.documents.apart;

import java.util.List;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.sheet.SafetySheet;

/** What was read on a file in the other process. */
public sealed interface PaperValues {
    /**
     * As a safety sheet; of a page without text too, since nobody can tell.
     *
     * @param byOcr numbers of the pages that were made out by OCR: what stands there counts once a person has confirmed it
     */
    record Sheet(SafetySheet sheet, List<Integer> byOcr) implements PaperValues {}

    /** As a label. */
    record Label(LabelPaper label, List<Integer> byOcr) implements PaperValues {}
}
