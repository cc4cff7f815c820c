package plumbrow.documents.picture;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.InformationValue;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.science.figure.Numbers;

/**
 * What matters most on a field: how much knowing each uncertain input exactly, before deciding, is worth at most
 * [$/ac]. Bars begin at zero. A short tick shows the same from half of the draws: how far it stands from the bar's end
 * shows how firm the figure is.
 */
public final class InformationPicture {
    private static final int MOST_BARS = 8;
    private static final double LEAST_USD_PER_ACRE = 0.005; // less reads as $0.00
    private static final int WIDE = 620;
    private static final double BAR = 13;
    private static final String COLOUR = "#0072B2"; // blue of Okabe and Ito, as in ProgramPalette

    private InformationPicture() {}

    /** The picture, {@code widthPx} wide; below 280 px it is drawn for 280 and scaled. */
    public static String svg(FieldAdvice field, int widthPx) {
        double width = Math.max(StripPicture.NARROWEST, widthPx);
        Canvas canvas = new Canvas();
        String title = "What knowing each input is worth on " + field.field().name();
        List<InformationValue> shown = field.whatMatters().stream()
                .filter(knowing -> knowing.usdPerAcre() >= LEAST_USD_PER_ACRE)
                .limit(MOST_BARS)
                .toList();
        if (shown.isEmpty()) {
            String nothing = "No uncertain input by itself changes which program is best on this field.";
            double end = paragraph(canvas, nothing, 13, Canvas.INK, width, 4);
            return canvas.svg(width, end + 8, title, nothing);
        }
        double most = shown.stream()
                .mapToDouble(knowing -> Math.max(knowing.usdPerAcre(), knowing.halfSampleUsdPerAcre()))
                .max()
                .orElse(0);
        double y = paragraph(
                canvas,
                "Value of knowing it before deciding, at most. Short tick: the same from half of the draws.",
                11.5,
                Canvas.QUIET,
                width,
                0);
        y += 4;
        for (InformationValue knowing : shown) {
            y = bar(canvas, knowing, most, width, y);
        }
        int left = field.whatMatters().size() - shown.size();
        if (left > 0) {
            double next = field.whatMatters().get(shown.size()).usdPerAcre();
            String worth = next < LEAST_USD_PER_ACRE
                    ? "less than a cent an acre"
                    : "at most " + Numbers.dollars(next, 2) + "/ac";
            String rest =
                    left + (left == 1 ? " more input is worth " : " more inputs are each worth ") + worth + " to know.";
            y = paragraph(canvas, rest, 11.5, Canvas.QUIET, width, y);
        }
        return canvas.svg(width, y + 6, title, finding(shown));
    }

    private static double bar(Canvas canvas, InformationValue knowing, double most, double width, double y) {
        boolean wide = width >= WIDE;
        double left = wide ? width * 0.42 : 4;
        double labelWidth = wide ? left - 16 : width - 8;
        double at = y;
        canvas.open(knowing.says());
        for (String line : Lettering.wrap(knowing.label(), 13, false, labelWidth, 2)) {
            at += 16;
            canvas.text(4, at, line, 13, Canvas.INK, false, Anchor.START);
        }
        double barTop = wide ? y + 4 : at + 5;
        double room = width - left - 16 - Lettering.width("$0,000.00/ac", 12, true);
        double perDollar = most > 0 ? room / most : 0;
        double length = Math.max(0, knowing.usdPerAcre()) * perDollar;
        double half = Math.max(0, knowing.halfSampleUsdPerAcre()) * perDollar;
        canvas.rect(left, barTop, length, BAR, COLOUR, 1);
        canvas.line(left, barTop - 2, left, barTop + BAR + 2, Canvas.INK, 1);
        canvas.line(left + length, barTop + BAR / 2, left + half, barTop + BAR / 2, Canvas.INK, 1);
        canvas.line(left + half, barTop, left + half, barTop + BAR, Canvas.INK, 1.6);
        canvas.text(
                left + Math.max(length, half) + 6,
                barTop + BAR - 2,
                Numbers.dollars(knowing.usdPerAcre(), 2) + "/ac",
                12,
                Canvas.INK,
                true,
                Anchor.START);
        canvas.close();
        return Math.max(at + 4, barTop + BAR + 4) + 4;
    }

    private static double paragraph(Canvas canvas, String words, double size, String fill, double width, double y) {
        double at = y;
        for (String line : Lettering.wrap(words, size, false, width - 8, 4)) {
            at += size + 4;
            canvas.text(4, at, line, size, fill, false, Anchor.START);
        }
        return at;
    }

    private static String finding(List<InformationValue> shown) {
        return shown.stream().map(InformationValue::says).collect(Collectors.joining(" "));
    }
}
