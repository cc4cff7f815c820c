package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.weighing.AdviceRange;
import plumbrow.advice.weighing.BestBand;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.Quantities;
import plumbrow.documents.picture.Canvas.Anchor;

/**
 * The range over which the advice holds: for each input that by itself makes another program the best, which program is best at
 * which value. The input lies on the axis, from its 1 % to its 99 % point; the advised program's band is plain and framed, those of
 * others are hatched, each with its program's name in it or below. A triangle marks what is taken now; a bar at each end shows two
 * standard errors.
 */
public final class BandsPicture {
    private static final int MOST_ROWS = 8;
    private static final int WIDE = 620;
    private static final double NAME = 13;
    private static final double SMALL = 11.5;
    private static final double TRACK = 24;

    private final FieldAdvice field;
    private final ProgramPalette palette;
    private final double width;
    private final Canvas canvas = new Canvas();

    private BandsPicture(FieldAdvice field, ProgramPalette palette, double width) {
        this.field = field;
        this.palette = palette;
        this.width = width;
    }

    /** The picture, {@code widthPx} wide; below 280 px it is drawn for 280 and scaled. */
    public static String svg(FieldAdvice field, ProgramPalette palette, int widthPx) {
        return new BandsPicture(field, palette, Math.max(StripPicture.NARROWEST, widthPx)).draw();
    }

    /** What the picture shows, for whoever cannot see it. */
    public static String finding(FieldAdvice field) {
        List<AdviceRange> shown = shown(field);
        return shown.isEmpty()
                ? "No single input changes which program is best within its plausible range."
                : shown.stream().map(AdviceRange::says).collect(Collectors.joining(" "));
    }

    private static List<AdviceRange> shown(FieldAdvice field) {
        return field.ranges().stream()
                .filter(AdviceRange::turns)
                .limit(MOST_ROWS)
                .toList();
    }

    private String draw() {
        String title =
                "The range over which the advice holds on " + field.field().name();
        List<AdviceRange> shown = shown(field);
        if (shown.isEmpty()) {
            double end = paragraph(finding(field), NAME, Canvas.INK, 4, 4, width - 8);
            return canvas.svg(width, end + 8, title, finding(field));
        }
        double y = paragraph(
                "Framed: " + shown.get(0).advised()
                        + ". Hatched: another program is best. Triangle: what is taken now.",
                SMALL,
                Canvas.QUIET,
                4,
                0,
                width - 8);
        for (AdviceRange range : shown) {
            y = row(range, y + 12);
        }
        long more = field.ranges().stream().filter(AdviceRange::turns).count() - shown.size();
        if (more > 0) {
            y = paragraph(
                    more + (more == 1 ? " more input changes" : " more inputs change") + " it further out.",
                    SMALL,
                    Canvas.QUIET,
                    4,
                    y + 4,
                    width - 8);
        }
        return canvas.svg(width, y + 6, title, finding(field));
    }

    private double row(AdviceRange range, double top) {
        boolean wide = width >= WIDE;
        double left = wide ? width * 0.32 : 8;
        double right = width - 10;
        double labelEnd = paragraph(range.label(), NAME, Canvas.INK, 4, top, wide ? left - 20 : width - 8);
        labelEnd = paragraph(
                "now about " + Quantities.text(range.likely(), range.unit()),
                SMALL,
                Canvas.QUIET,
                4,
                labelEnd,
                wide ? left - 20 : width - 8);
        double track = wide ? top + 12 : labelEnd + 14;
        canvas.open(range.says());
        List<String> outside = new ArrayList<>();
        for (int b = 0; b < range.bands().size(); b++) {
            band(range, b, left, right, track, outside);
        }
        double now = x(range, range.likely(), left, right);
        canvas.area(
                List.of(new double[] {now, track - 1}, new double[] {now - 5, track - 9}, new double[] {
                    now + 5, track - 9
                }),
                Canvas.INK,
                1);
        double below = ends(range, left, right, track + TRACK);
        canvas.close();
        for (String words : outside) {
            below = paragraph(words, SMALL, Canvas.INK, left, below, right - left);
        }
        return Math.max(labelEnd, below);
    }

    private void band(AdviceRange range, int b, double left, double right, double track, List<String> outside) {
        BestBand band = range.bands().get(b);
        double from = x(range, band.from(), left, right);
        double to = x(range, band.to(), left, right);
        boolean own = band.program().equals(range.advised());
        String colour = field.program(band.program()).map(palette::colour).orElse(Canvas.INK);
        canvas.rect(from, track, to - from, TRACK, colour, own ? 0.28 : 0.08);
        if (own) {
            canvas.frame(from + 0.8, track + 0.8, to - from - 1.6, TRACK - 1.6, Canvas.INK, 1.6);
        } else {
            canvas.hatch(from, track, to - from, TRACK, colour, 7);
        }
        canvas.rect(from, track + TRACK - 4, to - from, 4, colour, 1);
        if (Lettering.width(band.program(), SMALL, own) <= to - from - 10) {
            canvas.labelled((from + to) / 2, track + 14, band.program(), SMALL, Canvas.INK, own, Anchor.MIDDLE);
        } else {
            outside.add(where(range, b) + ": " + band.program());
        }
    }

    private static String where(AdviceRange range, int b) {
        boolean first = b == 0;
        boolean last = b == range.bands().size() - 1;
        if (first && last) {
            return "throughout";
        }
        if (first) {
            return "below " + range.end(1);
        }
        return last ? "above " + range.end(b) : range.end(b) + " to " + range.end(b + 1);
    }

    /** The values at which bands meet, with their errors, and the ends of what was looked at where there is room. */
    private double ends(AdviceRange range, double left, double right, double y) {
        double baseline = y + 17;
        double taken = Double.NEGATIVE_INFINITY;
        for (int b = 1; b < range.bands().size(); b++) {
            BestBand band = range.bands().get(b);
            double at = x(range, band.from(), left, right);
            canvas.line(at, y - TRACK - 2, at, y + 4, Canvas.INK, 1.4);
            double low = x(range, band.from() - band.fromError(), left, right);
            double high = x(range, band.from() + band.fromError(), left, right);
            canvas.line(low, y + 3, high, y + 3, Canvas.INK, 1.4);
            taken = Math.max(taken, tick(range.end(b), at, left, right, baseline, taken, true));
        }
        double lowWidth = Lettering.width(text(range, range.plausibleLow()), SMALL, false);
        double firstEnd = x(
                range, range.bands().get(Math.min(1, range.bands().size() - 1)).from(), left, right);
        if (firstEnd - left > lowWidth + 40) {
            canvas.text(left, baseline, text(range, range.plausibleLow()), SMALL, Canvas.QUIET, false, Anchor.START);
        }
        double highWidth = Lettering.width(text(range, range.plausibleHigh()), SMALL, false);
        if (right - taken > highWidth + 8) {
            canvas.text(right, baseline, text(range, range.plausibleHigh()), SMALL, Canvas.QUIET, false, Anchor.END);
        }
        return baseline + 2;
    }

    /** Writes a value under the track where it does not run into the one before; returns where it ends. */
    private double tick(String words, double at, double left, double right, double y, double taken, boolean bold) {
        double half = Lettering.width(words, SMALL, bold) / 2;
        double middle = Math.max(left + half, Math.min(right - half, at));
        if (middle - half < taken + 4) {
            return taken;
        }
        canvas.text(middle, y, words, SMALL, Canvas.INK, bold, Anchor.MIDDLE);
        return middle + half;
    }

    private static String text(AdviceRange range, double value) {
        return Quantities.text(value, range.unit());
    }

    private static double x(AdviceRange range, double value, double left, double right) {
        double share = (value - range.plausibleLow()) / (range.plausibleHigh() - range.plausibleLow());
        return left + Math.max(0, Math.min(1, share)) * (right - left);
    }

    private double paragraph(String words, double size, String fill, double x, double y, double widest) {
        double at = y;
        for (String line : Lettering.wrap(words, size, false, widest, 4)) {
            at += size + 4;
            canvas.text(x, at, line, size, fill, false, Anchor.START);
        }
        return at;
    }
}
