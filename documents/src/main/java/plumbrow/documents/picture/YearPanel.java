package plumbrow.documents.picture;

import java.util.List;
import plumbrow.advice.weighing.Band;
import plumbrow.documents.picture.Canvas.Anchor;

/**
 * One panel of a look ahead: bands over the years on one scale, under each other panel of the same years.
 *
 * @param title what it shows, with its unit
 * @param lines drawn in their order
 * @param scale of the values
 */
record YearPanel(String title, List<Line> lines, YearScale scale) {
    private static final double TITLE = 12;
    private static final double SMALL = 11;
    private static final double LEGEND = 15;

    /** Colours of Okabe and Ito, as in {@link ProgramPalette}; each line is named in the legend and drawn in its own dashes. */
    private static final List<String> COLOURS =
            List.of("#0072B2", "#D55E00", "#009E73", "#CC79A7", "#E69F00", "#56B4E9");

    private static final List<String> DASHES = List.of("", "7,3", "2,3", "9,3,2,3", "4,4", "1,2");

    /** A quantity: its band of eight in ten draws, and its middle. */
    record Line(String name, List<Band> bands) {
        Line {
            bands = List.copyOf(bands);
        }
    }

    /** Draws the panel from a height down and returns where it ends. The years stand under it where asked for. */
    double draw(Canvas canvas, double left, double right, double top, double tall, int firstYear, boolean years) {
        double y = top - 1;
        for (String part : Lettering.wrap(title, TITLE, true, right - 2, 3)) {
            y += LEGEND;
            canvas.text(2, y, part, TITLE, Canvas.INK, true, Anchor.START);
        }
        y = legend(canvas, right, y);
        double high = y + 12;
        double low = high + tall;
        for (double tick : scale.ticks()) {
            double at = scale.y(tick, high, low);
            canvas.line(left, at, right, at, Canvas.HAIRLINE, .8);
            canvas.text(left - 5, at + 4, scale.text(tick), SMALL, Canvas.QUIET, false, Anchor.END);
        }
        for (int i = 0; i < lines.size(); i++) {
            line(canvas, lines.get(i), i, left, right, high, low);
        }
        return years ? axis(canvas, left, right, low, firstYear) : low + 6;
    }

    private double legend(Canvas canvas, double right, double top) {
        if (lines.size() < 2) {
            return top;
        }
        double x = 2;
        double y = top + LEGEND;
        for (int i = 0; i < lines.size(); i++) {
            String name = lines.get(i).name();
            double wide = 30 + Lettering.width(name, SMALL, false) + 12;
            if (x > 2 && x + wide > right) {
                x = 2;
                y += LEGEND;
            }
            canvas.program(new double[] {x, x + 24}, new double[] {y - 4, y - 4}, colour(i), 2, dashes(i));
            canvas.text(x + 29, y, name, SMALL, Canvas.INK, false, Anchor.START);
            x += wide;
        }
        return y;
    }

    private void line(Canvas canvas, Line line, int place, double left, double right, double high, double low) {
        int count = line.bands().size();
        double[] xs = new double[count];
        double[] tops = new double[count];
        double[] middles = new double[count];
        double[] bottoms = new double[count];
        for (int i = 0; i < count; i++) {
            Band band = line.bands().get(i);
            xs[i] = x(i, count, left, right);
            tops[i] = scale.y(band.high(), high, low);
            middles[i] = scale.y(band.middle(), high, low);
            bottoms[i] = scale.y(band.low(), high, low);
        }
        canvas.area(xs, tops, bottoms, colour(place), .18);
        canvas.program(xs, middles, colour(place), 2, dashes(place));
        for (int i = 0; i < count; i++) {
            canvas.dot(xs[i], middles[i], 2.2, colour(place), Canvas.PAPER);
        }
    }

    private double axis(Canvas canvas, double left, double right, double low, int firstYear) {
        canvas.line(left, low, right, low, Canvas.INK, 1);
        int count = lines.get(0).bands().size();
        double room = (right - left) / Math.max(1, count - 1);
        int every = (int) Math.max(1, Math.ceil(34 / room));
        for (int i = 0; i < count; i++) {
            double x = x(i, count, left, right);
            canvas.line(x, low, x, low + 4, Canvas.INK, 1);
            if (i % every == 0) {
                canvas.text(x, low + 17, String.valueOf(firstYear + i), SMALL, Canvas.INK, false, Anchor.MIDDLE);
            }
        }
        return low + 22;
    }

    private static double x(int year, int count, double left, double right) {
        return count == 1 ? (left + right) / 2 : left + 14 + (right - left - 28) * year / (count - 1);
    }

    private static String colour(int place) {
        return COLOURS.get(place % COLOURS.size());
    }

    private static String dashes(int place) {
        return DASHES.get(place % DASHES.size());
    }

    /** The lowest of all bands. */
    static double lowest(List<Line> lines) {
        return lines.stream()
                .flatMap(line -> line.bands().stream())
                .mapToDouble(Band::low)
                .min()
                .orElse(0);
    }

    /** The highest of all bands. */
    static double highest(List<Line> lines) {
        return lines.stream()
                .flatMap(line -> line.bands().stream())
                .mapToDouble(Band::high)
                .max()
                .orElse(1);
    }
}
