package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.paper.Quote;

/** Gathers what is read; what is said twice and alike is kept once, where it stands first. */
final class Readings {
    private final List<LabelReading.OnPaper> all = new ArrayList<>();

    void state(LabelKind kind, LabelContent content, Quote quote) {
        boolean again = stated(kind).stream().anyMatch(one -> alike(one.content(), content));
        if (!again) {
            all.add(new LabelReading.Stated(kind, content, quote));
        }
    }

    void text(LabelKind kind, String words, Quote quote) {
        state(kind, new LabelContent.Text(words), quote);
    }

    void unclear(LabelKind kind, String why, Quote quote) {
        all.add(new LabelReading.Unclear(kind, why, quote));
    }

    /** What the product is called, where that was read; else empty. */
    String productName() {
        List<LabelReading.Stated> names = stated(LabelKind.PRODUCT_NAME);
        return names.size() == 1 ? names.get(0).words() : "";
    }

    boolean has(LabelKind kind) {
        return all.stream().anyMatch(reading -> reading.kind() == kind);
    }

    List<LabelReading.Stated> stated(LabelKind kind) {
        return all.stream()
                .filter(reading -> reading.kind() == kind && reading instanceof LabelReading.Stated)
                .map(LabelReading.Stated.class::cast)
                .toList();
    }

    /** In the order of the kinds; within a kind as found. */
    List<LabelReading.OnPaper> inOrder() {
        List<LabelReading.OnPaper> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparing(LabelReading::kind));
        return sorted;
    }

    private static boolean alike(LabelContent one, LabelContent other) {
        return one.equals(other)
                || (one.getClass() == other.getClass()
                        && one.about().equals(other.about())
                        && plain(one).equals(plain(other)));
    }

    private static String plain(LabelContent content) {
        return content.words().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d.<>%]+", "");
    }
}
