package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.science.figure.Numbers;

/**
 * The programs of a field side by side: how the margin of each is spread, on one scale of dollars per acre.
 *
 * <p>Each dot is one season in twenty. The thick band holds the middle eight of ten draws, the thin line the middle
 * eighteen of twenty. A tall tick is the median, a diamond the mean, the dashed line through all strips the baseline's
 * median. A program that may not be advised is hatched, with its standing in words.
 */
public final class StripPicture {
    static final int NARROWEST = 280;
    private static final int WIDE = 620;

    private StripPicture() {}

    /** The picture of one field, {@code widthPx} wide; below 280 px it is drawn for 280 and scaled. */
    public static String svg(FieldAdvice field, ProgramPalette palette, int widthPx) {
        return svg(field, field.programs(), palette, widthPx);
    }

    /** The same in as many pictures as it takes, all on one scale, with no more programs in each than given. */
    public static List<String> svgs(FieldAdvice field, ProgramPalette palette, int widthPx, int mostPrograms) {
        List<String> pictures = new ArrayList<>();
        int count = field.programs().size();
        for (int from = 0; from == 0 || from < count; from += mostPrograms) {
            List<WeighedProgram> shown = field.programs().subList(from, Math.min(count, from + mostPrograms));
            pictures.add(svg(field, shown, palette, widthPx));
        }
        return pictures;
    }

    private static String svg(FieldAdvice field, List<WeighedProgram> shown, ProgramPalette palette, int widthPx) {
        double width = Math.max(NARROWEST, widthPx);
        Canvas canvas = new Canvas();
        if (shown.isEmpty()) {
            canvas.text(4, 20, "No program has been entered for this field.", 13, Canvas.INK, false, Anchor.START);
            return canvas.svg(width, 30, title(field), "No program has been entered for this field.");
        }
        boolean wide = width >= WIDE;
        double labels = wide ? Math.min(270, width * 0.31) : 0;
        MoneyScale scale = scale(field, labels + 14, width - 16, wide ? 7 : 4);
        double top = legend(canvas, width) + 6;
        double baselineLabelAt = top + 12;
        double y = top + 22;
        double firstStrip = y;
        Canvas strips = new Canvas();
        for (WeighedProgram program : shown) {
            ProgramStrip strip = new ProgramStrip(field, program, palette.colour(program));
            y = wide
                    ? strip.drawBeside(strips, scale, 4, labels - 4, y)
                    : strip.drawUnder(strips, scale, 4, width - 8, y);
        }
        grid(canvas, scale, firstStrip, y);
        baseline(canvas, field, scale, baselineLabelAt, y, width);
        canvas.include(strips);
        double bottom = axis(canvas, scale, y, width);
        return canvas.svg(width, bottom, title(field), finding(field));
    }

    private static boolean isAdvised(FieldAdvice field, WeighedProgram program) {
        return program.name().equals(field.advised());
    }

    private static MoneyScale scale(FieldAdvice field, double left, double right, int ticks) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (WeighedProgram program : field.programs()) {
            MarginPoints points = MarginPoints.of(program);
            lowest = Math.min(lowest, Math.min(points.at(0.02), program.meanMarginUsdPerAcre()));
            highest = Math.max(highest, Math.max(points.at(0.98), program.meanMarginUsdPerAcre()));
        }
        return MoneyScale.holding(lowest, highest, left, right, ticks);
    }

    private static double legend(Canvas canvas, double width) {
        String words = "Each dot is 5 simulated seasons of 100. Thick band: the middle 80 of 100. Tall tick: median. "
                + "Diamond: mean.";
        double y = 0;
        for (String line : Lettering.wrap(words, 11.5, false, width - 8, 4)) {
            y += 15;
            canvas.text(4, y, line, 11.5, Canvas.QUIET, false, Anchor.START);
        }
        return y;
    }

    private static void grid(Canvas canvas, MoneyScale scale, double top, double bottom) {
        for (double tick : scale.ticks()) {
            canvas.line(scale.x(tick), top, scale.x(tick), bottom, Canvas.HAIRLINE, tick == 0 ? 1.6 : 0.6);
        }
    }

    private static void baseline(
            Canvas canvas, FieldAdvice field, MoneyScale scale, double labelAt, double bottom, double width) {
        field.program(field.baseline()).ifPresent(program -> {
            double median = MarginPoints.of(program).at(0.5);
            double x = scale.x(median);
            canvas.dashed(x, labelAt + 4, x, bottom, Canvas.INK, 1.2, "5,3");
            String words = "baseline median " + Numbers.dollars(median, 0) + "/ac";
            double half = Lettering.width(words, 11.5, true) / 2;
            double middle = Math.max(half + 2, Math.min(width - half - 2, x));
            canvas.text(middle, labelAt, words, 11.5, Canvas.INK, true, Anchor.MIDDLE);
        });
    }

    private static double axis(Canvas canvas, MoneyScale scale, double y, double width) {
        canvas.line(scale.left(), y, scale.right(), y, Canvas.INK, 1);
        for (double tick : scale.ticks()) {
            double x = scale.x(tick);
            canvas.line(x, y, x, y + 4, Canvas.INK, 1);
            double half = Lettering.width(scale.tickText(tick), 11.5, false) / 2;
            double middle = Math.max(half + 1, Math.min(width - half - 1, x));
            canvas.text(middle, y + 17, scale.tickText(tick), 11.5, Canvas.INK, false, Anchor.MIDDLE);
        }
        String words =
                "margin over these inputs, $/ac" + (scale.holdsZero() ? "" : " (the scale does not begin at zero)");
        double below = y + 20;
        for (String line : Lettering.wrap(words, 11.5, false, scale.right() - scale.left(), 2)) {
            below += 14;
            canvas.text(scale.left(), below, line, 11.5, Canvas.QUIET, false, Anchor.START);
        }
        return below + 6;
    }

    private static String title(FieldAdvice field) {
        return "Margins of the programs for " + field.field().name();
    }

    /** What the picture shows, for whoever cannot see it. */
    public static String finding(FieldAdvice field) {
        String programs = field.programs().stream()
                .map(program -> inWords(field, program))
                .collect(Collectors.joining(" "));
        return field.sentence() + " " + programs;
    }

    private static String inWords(FieldAdvice field, WeighedProgram program) {
        List<String> roles = isAdvised(field, program)
                ? List.of("advised", program.standing().word())
                : field.leading().contains(program.name())
                        ? List.of("about equal", program.standing().word())
                        : List.of(program.standing().word());
        return "%s (%s): mean %s/ac, median %s, 80 of 100 seasons from %s to %s%s."
                .formatted(
                        program.name(),
                        String.join(", ", roles),
                        Numbers.dollars(program.meanMarginUsdPerAcre(), 0),
                        Numbers.dollars(program.margin().middle(), 0),
                        Numbers.dollars(program.margin().low(), 0),
                        Numbers.dollars(program.margin().high(), 0),
                        program.baseline()
                                ? "; the baseline"
                                : "; beats the baseline in " + field.odds(program.chanceBeatsBaseline()));
    }
}
