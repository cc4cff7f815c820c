package plumbrow.documents.label.part;

import plumbrow.documents.label.text.LabelText;

/** Reads one subject from a label. */
@FunctionalInterface
interface Part {
    void read(LabelText label, Readings readings);
}
