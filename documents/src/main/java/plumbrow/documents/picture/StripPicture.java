package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedCourse;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.science.figure.Numbers;

/**
 * The courses of a field side by side: how the margin of each is spread, on one scale of dollars per acre.
 *
 * <p>Each dot is one season in twenty. The thick band holds the middle eight of ten draws, the thin line the middle
 * eighteen of twenty. A tall tick is the median, a diamond the mean, the dashed line through all strips the baseline's
 * median. A course that may not be advised is hatched, with its standing in words.
 */
public final class StripPicture {
    static final int NARROWEST = 280;
    private static final int WIDE = 620;

    private StripPicture() {}

    /** The picture of one field, {@code widthPx} wide; below 280 px it is drawn for 280 and scaled. */
    public static String svg(FieldAdvice field, CoursePalette palette, int widthPx) {
        return svg(field, field.courses(), palette, widthPx);
    }

    /** The same in as many pictures as it takes, all on one scale, with no more courses in each than given. */
    public static List<String> svgs(FieldAdvice field, CoursePalette palette, int widthPx, int mostCourses) {
        List<String> pictures = new ArrayList<>();
        int count = field.courses().size();
        for (int from = 0; from == 0 || from < count; from += mostCourses) {
            List<WeighedCourse> shown = field.courses().subList(from, Math.min(count, from + mostCourses));
            pictures.add(svg(field, shown, palette, widthPx));
        }
        return pictures;
    }

    private static String svg(FieldAdvice field, List<WeighedCourse> shown, CoursePalette palette, int widthPx) {
        double width = Math.max(NARROWEST, widthPx);
        Canvas canvas = new Canvas();
        if (shown.isEmpty()) {
            canvas.text(4, 20, "No course has been entered for this field.", 13, Canvas.INK, false, Anchor.START);
            return canvas.svg(width, 30, title(field), "No course has been entered for this field.");
        }
        boolean wide = width >= WIDE;
        double labels = wide ? Math.min(270, width * 0.31) : 0;
        MoneyScale scale = scale(field, labels + 14, width - 16, wide ? 7 : 4);
        double top = legend(canvas, width) + 6;
        double baselineLabelAt = top + 12;
        double y = top + 22;
        double firstStrip = y;
        Canvas strips = new Canvas();
        for (WeighedCourse course : shown) {
            CourseStrip strip = new CourseStrip(field, course, palette.colour(course));
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

    private static boolean isAdvised(FieldAdvice field, WeighedCourse course) {
        return course.name().equals(field.advised());
    }

    private static MoneyScale scale(FieldAdvice field, double left, double right, int ticks) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (WeighedCourse course : field.courses()) {
            MarginPoints points = MarginPoints.of(course);
            lowest = Math.min(lowest, Math.min(points.at(0.02), course.meanMarginUsdPerAcre()));
            highest = Math.max(highest, Math.max(points.at(0.98), course.meanMarginUsdPerAcre()));
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
        field.course(field.baseline()).ifPresent(course -> {
            double median = MarginPoints.of(course).at(0.5);
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
        return "Margins of the courses for " + field.field().name();
    }

    /** What the picture shows, for whoever cannot see it. */
    public static String finding(FieldAdvice field) {
        String courses =
                field.courses().stream().map(course -> inWords(field, course)).collect(Collectors.joining(" "));
        return field.sentence() + " " + courses;
    }

    private static String inWords(FieldAdvice field, WeighedCourse course) {
        List<String> roles = isAdvised(field, course)
                ? List.of("advised", course.standing().word())
                : field.leading().contains(course.name())
                        ? List.of("about equal", course.standing().word())
                        : List.of(course.standing().word());
        return "%s (%s): mean %s/ac, median %s, 80 of 100 seasons from %s to %s%s."
                .formatted(
                        course.name(),
                        String.join(", ", roles),
                        Numbers.dollars(course.meanMarginUsdPerAcre(), 0),
                        Numbers.dollars(course.margin().middle(), 0),
                        Numbers.dollars(course.margin().low(), 0),
                        Numbers.dollars(course.margin().high(), 0),
                        course.baseline()
                                ? "; the baseline"
                                : "; beats the baseline in " + field.odds(course.chanceBeatsBaseline()));
    }
}
