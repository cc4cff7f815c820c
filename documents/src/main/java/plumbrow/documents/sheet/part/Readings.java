package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;

/** Gathers what is read; what is said twice and alike is kept once, where it stands first. */
final class Readings {
    private final List<Reading.OnPaper> all = new ArrayList<>();

    void state(ValueKind kind, Content content, Quote quote) {
        if (all.stream()
                .noneMatch(reading -> reading instanceof Reading.Stated one
                        && one.kind() == kind
                        && Alike.alike(one.content(), content))) {
            all.add(new Reading.Stated(kind, content, quote));
        }
    }

    void noData(ValueKind kind, Quote quote) {
        all.add(new Reading.NoData(kind, quote));
    }

    void unclear(ValueKind kind, String why, Quote quote) {
        all.add(new Reading.Unclear(kind, why, quote));
    }

    boolean has(ValueKind kind) {
        return all.stream().anyMatch(reading -> reading.kind() == kind);
    }

    List<Reading.Stated> stated(ValueKind kind) {
        return all.stream()
                .filter(reading -> reading.kind() == kind && reading instanceof Reading.Stated)
                .map(Reading.Stated.class::cast)
                .toList();
    }

    /** In the order of the kinds; within a kind as found. */
    List<Reading.OnPaper> inOrder() {
        List<Reading.OnPaper> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparing(Reading::kind));
        return sorted;
    }
}
