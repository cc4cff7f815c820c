package plumbrow.documents.picture;

import java.util.List;
import java.util.Locale;
import plumbrow.documents.card.EverydayScale;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.science.figure.Numbers;

/**
 * A product among everyday substances: one dot for the dose that kills half of the rats that swallow it, on a scale where
 * each step is ten times the one before. To the left it takes less.
 */
public final class EverydayPicture {
    private static final double ROW = 21;
    private static final double LETTER = 11.5;
    private static final int NARROWEST = 280;

    private EverydayPicture() {}

    /** The picture, {@code widthPx} wide; empty where the product's own dose is unknown. */
    public static String svg(EverydayScale scale, int widthPx) {
        List<EverydayScale.Entry> entries = scale.entries();
        if (entries.isEmpty()) {
            return "";
        }
        double width = Math.max(NARROWEST, widthPx);
        double names = Math.min(
                width * .4,
                14
                        + entries.stream()
                                .mapToDouble(each -> Lettering.width(each.name(), LETTER, each.own()))
                                .max()
                                .orElse(0));
        int low = decade(entries.get(0).ld50MgPerKg(), true);
        int high = decade(entries.get(entries.size() - 1).ld50MgPerKg(), false);
        Canvas canvas = new Canvas();
        double left = names + 8;
        double right = width - 74;
        double y = 20;
        double bottom = y + entries.size() * ROW;
        for (int ten = low; ten <= high; ten++) {
            double x = left + (right - left) * (ten - low) / Math.max(1, high - low);
            canvas.line(x, y - 4, x, bottom + 2, Canvas.HAIRLINE, .8);
            canvas.text(
                    x, bottom + 15, Numbers.plain(Math.pow(10, ten)), LETTER - 1, Canvas.QUIET, false, Anchor.MIDDLE);
        }
        for (EverydayScale.Entry each : entries) {
            double middle = y + ROW / 2;
            double at = left + (right - left) * (Math.log10(each.ld50MgPerKg()) - low) / Math.max(1, high - low);
            row(canvas, each, names, at, middle);
            y += ROW;
        }
        canvas.text(4, 12, "← less kills", LETTER - 1, Canvas.QUIET, false, Anchor.START);
        canvas.text(width - 4, 12, "mg per kg, rat, swallowed once", LETTER - 1, Canvas.QUIET, false, Anchor.END);
        return canvas.svg(width, bottom + 22, "Half-lethal dose by mouth", finding(scale));
    }

    private static void row(Canvas canvas, EverydayScale.Entry each, double names, double at, double middle) {
        String name =
                Lettering.wrap(each.name(), LETTER, each.own(), names - 8, 1).get(0);
        canvas.text(names, middle + 4, name, LETTER, Canvas.INK, each.own(), Anchor.END);
        if (each.own()) {
            canvas.diamond(at, middle, 6, Canvas.INK, Canvas.INK);
        } else {
            canvas.dot(at, middle, 4, Canvas.PAPER, Canvas.INK);
        }
        canvas.labelled(at + 10, middle + 4, dose(each), LETTER - .5, Canvas.INK, each.own(), Anchor.START);
    }

    private static String dose(EverydayScale.Entry each) {
        return (each.atLeast() ? "more than " : "") + Numbers.plain(each.ld50MgPerKg());
    }

    private static int decade(double dose, boolean below) {
        double ten = Math.log10(dose);
        return (int) (below ? Math.floor(ten) : Math.ceil(ten));
    }

    /** What the picture shows, for whoever cannot see it. */
    public static String finding(EverydayScale scale) {
        StringBuilder words = new StringBuilder("From the least to the largest dose: ");
        scale.entries()
                .forEach(each -> words.append(each.own() ? "this product, " + each.name() : each.name())
                        .append(' ')
                        .append(dose(each))
                        .append("; "));
        return words.substring(0, words.length() - 2).toLowerCase(Locale.ROOT).replaceFirst("^f", "F") + " mg/kg. "
                + EverydayScale.CAUTION;
    }
}
