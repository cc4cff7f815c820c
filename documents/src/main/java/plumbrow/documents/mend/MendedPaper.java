package plumbrow.documents.mend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.card.Origin;
import plumbrow.documents.card.RegistrationNumber;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.paper.Box;
import plumbrow.documents.paper.Mark;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.shelf.FiledPaper;

/** What sheets and labels have in common when they are put right. */
public final class MendedPaper {
    private MendedPaper() {}

    static Mend.Key key(String about, String was, Quote quote) {
        return new Mend.Key(about, was, quote.words());
    }

    /** The last word on a reading, where there is one. */
    public static Optional<Mend> last(List<Mend> mends, String about, String was, Quote quote) {
        return Optional.ofNullable(Mend.last(mends).get(key(about, was, quote)));
    }

    /**
     * A reading by what tells it from others.
     *
     * @param words the paper's very words
     */
    public record Read(String about, String was, String words) {}

    /** What people say that stands beside the readings: what they added, and what they typed over that is no longer read so. */
    public static List<Mend> beside(List<Mend> mends, List<Read> readings) {
        return Mend.last(mends).entrySet().stream()
                .filter(entry -> readings.stream()
                        .noneMatch(read -> entry.getKey().equals(new Mend.Key(read.about, read.was, read.words))))
                .map(Map.Entry::getValue)
                .filter(mend -> !mend.value().isEmpty() && !mend.about().equals(Mend.BELONGS_TO))
                .toList();
    }

    /** The product that people say a paper belongs to. */
    public static Optional<Mend> belongs(List<Mend> mends) {
        return Mend.last(mends).values().stream()
                .filter(mend -> mend.about().equals(Mend.BELONGS_TO))
                .findFirst();
    }

    static boolean byOcr(Quote quote, List<Integer> pages) {
        return quote.marks().stream().anyMatch(mark -> pages.contains(mark.page()));
    }

    static String unconfirmed(String words) {
        return "read by OCR as “" + words + "”; nobody has held it against the page yet";
    }

    /** Words that a person typed and that stand at no box he pointed to. */
    static Quote nowhere(Mend mend) {
        return new Quote(mend.value(), List.of(new Mark(Math.max(1, mend.page()), new Box(0, 0, 0, 0))));
    }

    /** What a paper is filed under, with what people put right of it. */
    public static FiledPaper filed(FiledPaper paper, List<Mend> mends) {
        String product = paper.product();
        String registration = paper.registration();
        LocalDate dated = paper.dated();
        for (Mend mend : Mend.last(mends).values()) {
            Optional<String> said = said(mend);
            if (mend.about().equals(ValueKind.PRODUCT_NAME.title())) {
                product = said.orElse("");
            } else if (mend.about().equals(ValueKind.REGISTRATION_NUMBER.title())) {
                registration = said.map(RegistrationNumber::plain).orElse("");
            } else if (mend.about().equals(LabelKind.LABEL_DATE.title())
                    || mend.about().equals(ValueKind.REVISION_DATE.title())) {
                dated = said.flatMap(text -> day(mend.about(), text)).orElse(null);
            }
        }
        for (Mend mend : Mend.last(mends).values()) {
            if (mend.about().equals(Mend.BELONGS_TO)) {
                product = mend.value();
                registration = mend.words().isEmpty() ? "" : RegistrationNumber.plain(mend.words());
            }
        }
        return new FiledPaper(
                paper.number(),
                paper.kind(),
                paper.fileName(),
                product,
                registration,
                dated,
                paper.pages(),
                paper.needsTyping());
    }

    private static Optional<String> said(Mend mend) {
        return switch (mend.verdict()) {
            case CONFIRMED -> Optional.of(mend.was());
            case TYPED_OVER, ADDED -> Optional.of(mend.value());
            case STRUCK, TAKEN_BACK -> Optional.empty();
        };
    }

    private static Optional<LocalDate> day(String about, String text) {
        List<LocalDate> days = new ArrayList<>();
        if (about.equals(LabelKind.LABEL_DATE.title())) {
            LabelText.read(LabelKind.LABEL_DATE, text).forEach(content -> {
                if (content instanceof LabelContent.Day day) {
                    days.add(day.date());
                }
            });
        } else {
            TypedText.read(ValueKind.REVISION_DATE, text).forEach(content -> {
                if (content instanceof Content.Day day) {
                    days.add(day.date());
                }
            });
        }
        return days.stream().findFirst();
    }

    /** Origins of a card that say who put a value right. */
    public static UnaryOperator<Origin> origins(List<Mend> ofSheet, @Nullable List<Mend> ofLabel) {
        Map<String, Mend> sheet = byWords(ofSheet);
        Map<String, Mend> label = byWords(ofLabel == null ? List.of() : ofLabel);
        return origin -> {
            if (!(origin instanceof Origin.OnPaper paper)) {
                return origin;
            }
            Mend mend = (paper.paper() == Origin.PaperKind.LABEL ? label : sheet)
                    .get(paper.quote().words());
            return mend == null
                    ? origin
                    : new Origin.Mended(paper, mend.verdict().word(), mend.who(), mend.day());
        };
    }

    /** By the paper's words, or by the person's where nothing was read. */
    private static Map<String, Mend> byWords(List<Mend> mends) {
        Map<String, Mend> byWords = new HashMap<>();
        Mend.last(mends).values().forEach(mend -> {
            byWords.put(mend.words().isEmpty() ? mend.value() : mend.words(), mend);
            byWords.put(mend.value(), mend);
        });
        byWords.remove("");
        return byWords;
    }
}
