package plumbrow.documents.label.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;

/** Something a label says, in one spelling for the truth and for what was read; blanks, case and hyphens don't count. */
record Fact(LabelKind kind, String key) {
    static Fact of(LabelKind kind, LabelContent content) {
        return new Fact(kind, content.toString().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d.=%]+", ""));
    }

    static Fact unclear(LabelKind kind) {
        return new Fact(kind, "(unclear)");
    }

    static List<Fact> of(LabelPaper label) {
        List<Fact> facts = new ArrayList<>();
        for (LabelReading.OnPaper reading : label.readings()) {
            facts.add(
                    reading instanceof LabelReading.Stated stated
                            ? of(stated.kind(), stated.content())
                            : unclear(reading.kind()));
        }
        return facts;
    }
}
