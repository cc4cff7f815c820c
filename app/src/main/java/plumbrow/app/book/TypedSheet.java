package plumbrow.app.book;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.card.Origin;
import plumbrow.documents.card.RegistrationNumber;
import plumbrow.documents.mend.TypedText;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.shelf.FiledPaper;

/**
 * A safety sheet as a person typed it from its pages. What he typed is laid out as a sheet and read by the same reader, so
 * that a number he wrote means what it means on any sheet, and one that can't be read in one way is unknown as there. Of
 * several words on a thing the last counts.
 *
 * @param sheet what was read of it
 * @param last what was typed last, by what it is
 */
public record TypedSheet(SafetySheet sheet, Map<ValueKind, TypedValue> last) {
    /** What a person says the whole paper is. */
    public static final String KIND = "This paper is a";

    public static TypedSheet of(List<TypedValue> typed) {
        Map<ValueKind, TypedValue> last = new EnumMap<>(ValueKind.class);
        for (TypedValue value : typed) {
            kind(value.about()).ifPresent(kind -> last.put(kind, value));
        }
        Map<Integer, StringJoiner> sections = new TreeMap<>();
        Map<Integer, String> titles = new LinkedHashMap<>();
        last.forEach((kind, value) -> {
            titles.put(kind.home().number(), kind.home().title());
            sections.computeIfAbsent(kind.home().number(), number -> new StringJoiner("\n"))
                    .add(TypedText.laidOut(kind, value.value()));
        });
        StringBuilder text = new StringBuilder(TypedText.HEAD);
        sections.forEach((number, lines) -> text.append("SECTION ")
                .append(number)
                .append(": ")
                .append(titles.get(number))
                .append('\n')
                .append(lines)
                .append("\n\n"));
        return new TypedSheet(SheetReader.read(text.toString().getBytes(StandardCharsets.UTF_8), "typed page"), last);
    }

    /** What a paper is filed under, with what was typed from it; a paper that was read is left as it is. */
    static FiledPaper filed(FiledPaper scan, List<TypedValue> typed) {
        if (!scan.needsTyping() || typed.isEmpty()) {
            return scan;
        }
        TypedSheet sheet = of(typed);
        String number = sheet.said(ValueKind.REGISTRATION_NUMBER);
        return new FiledPaper(
                scan.number(),
                kindOf(typed).orElse(scan.kind()),
                scan.fileName(),
                sheet.said(ValueKind.PRODUCT_NAME),
                number.isEmpty() ? "" : RegistrationNumber.plain(number),
                sheet.dated(),
                scan.pages(),
                true);
    }

    private static Optional<FiledPaper.Kind> kindOf(List<TypedValue> typed) {
        return typed.stream()
                .filter(value -> value.about().equals(KIND))
                .reduce((first, second) -> second)
                .flatMap(value -> Arrays.stream(FiledPaper.Kind.values())
                        .filter(kind -> kind.word().equals(value.value()))
                        .findFirst());
    }

    /** What was understood of a value: the readings in words; empty where the reader makes nothing of it. */
    public List<String> understood(String about) {
        return kind(about)
                .map(kind -> sheet.all(kind).stream().map(Reading::words).toList())
                .orElse(List.of());
    }

    /** The origins of a card made of it: who typed what, and from which page. */
    public UnaryOperator<Origin> origins() {
        Map<Quote, TypedValue> byQuote = new LinkedHashMap<>();
        for (Reading.OnPaper reading : sheet.readings()) {
            TypedValue value = last.get(reading.kind());
            if (value != null) {
                byQuote.put(reading.quote(), value);
            }
        }
        return origin -> {
            TypedValue value = origin instanceof Origin.OnPaper paper && paper.paper() == Origin.PaperKind.SAFETY_SHEET
                    ? byQuote.get(paper.quote())
                    : null;
            return value == null ? origin : new Origin.Typed(value.who(), day(value), value.page());
        };
    }

    private static LocalDate day(TypedValue value) {
        return value.when().atZone(ZoneOffset.UTC).toLocalDate();
    }

    private String said(ValueKind kind) {
        return sheet.of(kind) instanceof Reading.Stated stated ? stated.words() : "";
    }

    private @Nullable LocalDate dated() {
        return sheet.of(ValueKind.REVISION_DATE) instanceof Reading.Stated stated
                        && stated.content() instanceof Content.Day day
                ? day.date()
                : null;
    }

    private static Optional<ValueKind> kind(String about) {
        return Arrays.stream(ValueKind.values())
                .filter(kind -> kind.title().equals(about))
                .findFirst();
    }
}
