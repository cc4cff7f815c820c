package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;

/** Gathers what is read; what is said twice and alike is kept once, where it stands first. */
final class Readings {
    /** A sheet of many ingredients has some hundreds. */
    private static final int MOST = 3_000;

    private final List<Reading.OnPaper> all = new ArrayList<>();

    void state(ValueKind kind, Content content, Quote quote) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) instanceof Reading.Stated one && one.kind() == kind && alike(kind, one.content(), content)) {
                if (one.content() instanceof Content.Statement code
                        && content instanceof Content.Statement words
                        && code.statement().isEmpty()
                        && !words.statement().isEmpty()) {
                    all.set(
                            i,
                            new Reading.Stated(
                                    kind,
                                    new Content.Statement(code.code(), words.statement(), code.printed()),
                                    quote));
                }
                return;
            }
        }
        add(new Reading.Stated(kind, content, quote));
    }

    /** Volatile matter is bounded by law in each of its units. */
    private static boolean alike(ValueKind kind, Content one, Content other) {
        boolean otherUnit = kind == ValueKind.VOC
                && one instanceof Content.Measured first
                && other instanceof Content.Measured second
                && !first.amount().unit().equals(second.amount().unit());
        return !otherUnit && Alike.alike(one, other);
    }

    void noData(ValueKind kind, Quote quote) {
        add(new Reading.NoData(kind, quote));
    }

    void unclear(ValueKind kind, String why, Quote quote) {
        add(new Reading.Unclear(kind, why, quote));
    }

    private void add(Reading.OnPaper reading) {
        if (all.size() >= MOST) {
            throw new PaperTrouble("The file says more than " + MOST + " things; expected one safety sheet.");
        }
        all.add(reading);
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
