package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.Quantities;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.documents.picture.DotStack.Dot;
import plumbrow.science.figure.Numbers;

/** One program of a {@link StripPicture}: its label, and its margins as dots over a band. */
record ProgramStrip(FieldAdvice field, WeighedProgram program, String colour) {
    private static final double NAME = 14;
    private static final double SMALL = 12;
    private static final double DOT = 4.2;
    private static final int COLUMNS = 17; // of dots over the whole scale: few enough that a shape can be seen
    private static final double BAND = 9;
    private static final double TALLEST_STACK = 46;
    private static final double GAP = 16;

    /** Label on the left, strip on the right; returns where the next program begins [px]. */
    double drawBeside(Canvas canvas, MoneyScale scale, double labelX, double labelWidth, double y) {
        double labelEnd = label(canvas, labelX, labelWidth, y + 4);
        double stripEnd = strip(canvas, scale, y);
        return Math.max(labelEnd, stripEnd) + GAP;
    }

    /** Label above, strip below it, for a narrow screen. */
    double drawUnder(Canvas canvas, MoneyScale scale, double labelX, double labelWidth, double y) {
        return strip(canvas, scale, label(canvas, labelX, labelWidth, y) + 4) + GAP;
    }

    private double label(Canvas canvas, double x, double width, double y) {
        canvas.open(program.name());
        canvas.rect(x, y + 3, 5, NAME - 1, colour, 1);
        double at = y;
        for (String line : Lettering.wrap(program.name(), NAME, true, width - 11, 3)) {
            at += NAME + 2;
            canvas.labelled(x + 11, at, line, NAME, Canvas.INK, true, Anchor.START);
        }
        at += 4;
        double markSize = 13;
        boolean first = true;
        for (String line : standing(width - 30)) {
            at += SMALL + 2;
            if (first) {
                StandingMark.draw(canvas, program.standing(), x + 11, at - markSize + 2, markSize);
                first = false;
            }
            canvas.labelled(x + 30, at, line, SMALL, Canvas.INK, advised(), Anchor.START);
        }
        canvas.close();
        return at + 4;
    }

    private boolean advised() {
        return program.name().equals(field.advised());
    }

    private boolean equal() {
        return field.leading().contains(program.name());
    }

    /** Standing, odds and mean gain, on as few lines as hold them. */
    private List<String> standing(double widest) {
        List<String> lines = new ArrayList<>();
        lines.add((advised() ? "advised, " : equal() ? "about equal, " : "") + StandingMark.word(program.standing()));
        for (String part : againstBaseline()) {
            String longer = lines.get(lines.size() - 1) + " · " + part;
            if (Lettering.width(longer, SMALL, advised()) <= widest) {
                lines.set(lines.size() - 1, longer);
            } else {
                lines.add(part);
            }
        }
        return lines;
    }

    private List<String> againstBaseline() {
        if (program.baseline()) {
            return List.of("the baseline");
        }
        String mean = "on average " + Quantities.gain(program.meanGainUsdPerAcre()) + "/ac";
        return List.of("beats baseline " + field.odds(program.chanceBeatsBaseline()), mean);
    }

    private double strip(Canvas canvas, MoneyScale scale, double y) {
        MarginPoints points = MarginPoints.of(program);
        double reach = Math.max(DOT * 2 + 0.6, (scale.right() - scale.left()) / COLUMNS);
        List<Dot> dots = DotStack.of(points, scale, reach);
        int tallest = DotStack.tallest(dots);
        double rise = tallest == 1 ? 0 : Math.min(DOT * 2 + 0.6, (TALLEST_STACK - DOT * 2) / (tallest - 1.0));
        double floor = y + 4 + DOT * 2 + rise * (tallest - 1);
        boolean weighable = program.standing().advisable();
        for (Dot dot : dots) {
            canvas.dot(
                    dot.x(),
                    floor - DOT - dot.level() * rise,
                    DOT,
                    weighable ? colour : Canvas.PAPER,
                    weighable ? Canvas.PAPER : colour);
        }
        double bandTop = floor + 5;
        band(canvas, scale, points, bandTop);
        double middle = bandTop + BAND / 2;
        double median = scale.x(points.at(0.5));
        canvas.line(median, bandTop - 4, median, bandTop + BAND + 4, Canvas.INK, 2.4);
        canvas.diamond(scale.x(program.meanMarginUsdPerAcre()), middle, 4.6, Canvas.PAPER, Canvas.INK);
        values(canvas, scale, points, bandTop + BAND + 15);
        return bandTop + BAND + 18;
    }

    private void band(Canvas canvas, MoneyScale scale, MarginPoints points, double top) {
        double left = scale.x(points.at(0.1));
        double right = scale.x(points.at(0.9));
        double middle = top + BAND / 2;
        canvas.line(scale.x(points.at(0.05)), middle, scale.x(points.at(0.95)), middle, colour, 1.6);
        if (program.standing() == Standing.BARRED) {
            canvas.rect(left, top, right - left, BAND, Canvas.PAPER, 1);
            for (double x = left; x <= right - BAND; x += 5) {
                canvas.line(x, top + BAND, x + BAND, top, colour, 1.3);
            }
        } else if (program.standing() == Standing.UNKNOWN) {
            canvas.rect(left, top, right - left, BAND, Canvas.PAPER, 1);
            for (double x = left + 4; x < right; x += 4) {
                canvas.line(x, top, x, top + BAND, colour, 1);
            }
        } else {
            canvas.rect(left, top, right - left, BAND, colour, 0.45);
        }
        canvas.frame(left, top, right - left, BAND, colour, 1);
    }

    /** Median under its tick; the ends of the band where there is room for them beside it. */
    private static void values(Canvas canvas, MoneyScale scale, MarginPoints points, double y) {
        String low = Numbers.dollars(points.at(0.1), 0);
        String median = Numbers.dollars(points.at(0.5), 0);
        String high = Numbers.dollars(points.at(0.9), 0);
        double half = Lettering.width(median, 11.5, true) / 2;
        double middle = Math.max(scale.left() + half, Math.min(scale.right() - half, scale.x(points.at(0.5))));
        canvas.labelled(middle, y, median, 11.5, Canvas.INK, true, Anchor.MIDDLE);
        double lowEnd = scale.x(points.at(0.1)) + Lettering.width(low, 11.5, false) / 2;
        if (lowEnd < middle - half - 4) {
            canvas.labelled(lowEnd, y, low, 11.5, Canvas.QUIET, false, Anchor.END);
        }
        double highStart = scale.x(points.at(0.9)) - Lettering.width(high, 11.5, false) / 2;
        if (highStart > middle + half + 4) {
            canvas.labelled(highStart, y, high, 11.5, Canvas.QUIET, false, Anchor.START);
        }
    }
}
