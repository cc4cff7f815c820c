package plumbrow.documents.ocr;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.paper.Optical;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;

/**
 * Takes back what rests on numbers that an OCR was not sure of, that are no number of their kind, or that don't add up.
 *
 * The check digit of a CAS number must fit; shares of a product can't be above 100 % nor be more than that together.
 */
public final class OcrDoubts {
    private static final double WHOLE = 100;
    /** Shares are printed rounded. */
    private static final double ROUNDED = .6;

    private OcrDoubts() {}

    /** The sheet with what is unsure called unclear. */
    public static SafetySheet over(SafetySheet sheet, Optical optical) {
        if (optical.pages().isEmpty()) {
            return sheet;
        }
        boolean tooMuch = shares(sheet, optical) > WHOLE + ROUNDED;
        List<Reading.OnPaper> readings = new ArrayList<>();
        for (Reading.OnPaper reading : sheet.readings()) {
            String why = reading instanceof Reading.Stated stated && optical.holds(stated.quote())
                    ? doubt(stated, optical, tooMuch)
                    : "";
            readings.add(why.isEmpty() ? reading : new Reading.Unclear(reading.kind(), why, reading.quote()));
        }
        return new SafetySheet(
                sheet.file(), sheet.pages(), sheet.needsTyping(), sheet.sections(), readings, sheet.notices());
    }

    private static String doubt(Reading.Stated stated, Optical optical, boolean tooMuch) {
        if (stated.content() instanceof Content.Ingredient one) {
            if (!one.cas().isEmpty() && !one.casFits()) {
                return "OCR reads the CAS number " + one.cas() + ", whose check digit does not fit";
            }
            if (one.percent() != null && (one.percent().high() > WHOLE || tooMuch)) {
                return "OCR reads " + one.words() + "; the shares together are more than 100 %";
            }
        }
        return numbers(stated.words(), stated.quote(), optical);
    }

    private static double shares(SafetySheet sheet, Optical optical) {
        return sheet.all(ValueKind.INGREDIENT).stream()
                .filter(stated -> optical.holds(stated.quote()))
                .mapToDouble(stated -> stated.content() instanceof Content.Ingredient one ? low(one.percent()) : 0)
                .sum();
    }

    private static double low(@org.jspecify.annotations.Nullable Amount percent) {
        return percent == null
                        || percent.low() > WHOLE // no share at all, and unclear by itself
                        || percent.qualifier() == Amount.Qualifier.LESS_THAN
                        || percent.qualifier() == Amount.Qualifier.AT_MOST
                ? 0
                : percent.low();
    }

    /** The label with what is unsure called unclear. */
    public static LabelPaper over(LabelPaper label, Optical optical) {
        if (optical.pages().isEmpty()) {
            return label;
        }
        double shares = label.readings().stream()
                .filter(reading -> optical.holds(reading.quote()))
                .mapToDouble(reading -> reading instanceof LabelReading.Stated stated ? share(stated.content()) : 0)
                .filter(share -> share <= WHOLE)
                .sum();
        List<LabelReading.OnPaper> readings = new ArrayList<>();
        for (LabelReading.OnPaper reading : label.readings()) {
            String why = "";
            if (reading instanceof LabelReading.Stated stated && optical.holds(stated.quote())) {
                double own = share(stated.content());
                why = own > 0 && (own > WHOLE || shares > WHOLE + ROUNDED)
                        ? "OCR reads " + stated.words() + "; the shares together are more than 100 %"
                        : numbers(stated.words(), stated.quote(), optical);
            }
            readings.add(why.isEmpty() ? reading : new LabelReading.Unclear(reading.kind(), why, reading.quote()));
        }
        return new LabelPaper(label.file(), label.pages(), label.needsTyping(), readings, label.notices());
    }

    private static double share(LabelContent content) {
        return content instanceof LabelContent.Active one && one.percent() != null
                ? one.percent().low()
                : 0;
    }

    /** A doubt about a number of the line leaves words alone in which no digit stands. */
    private static String numbers(String words, Quote quote, Optical optical) {
        boolean number = holdsDigit(words);
        List<Optical.Doubt> doubts = optical.about(quote).stream()
                .filter(doubt -> number || !holdsDigit(doubt.text()))
                .toList();
        return doubts.isEmpty()
                ? ""
                : "OCR reads “" + words + "”, but of "
                        + doubts.stream()
                                .map(Optical.Doubt::text)
                                .distinct()
                                .limit(3)
                                .collect(Collectors.joining("”, “", "“", "”"))
                        + " "
                        + doubts.get(0).why();
    }

    private static boolean holdsDigit(String words) {
        return words.chars().anyMatch(Character::isDigit);
    }
}
