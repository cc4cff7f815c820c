package plumbrow.documents.picture;

import java.util.List;
import plumbrow.advice.calendar.SeasonCalendar;
import plumbrow.documents.picture.Canvas.Anchor;

/** The crop of a season: its stages, its canopy closing, and when it must be free of weeds. */
final class CropRow {
    private static final String LEAF = "#009E73"; // bluish green of Okabe and Ito
    private static final double HIGH = 22;

    private CropRow() {}

    static double draw(Canvas canvas, SeasonCalendar calendar, DayScale days, double label, double y) {
        SeasonCalendar.Canopy canopy = calendar.canopy();
        if (canopy == null) {
            return y + 4;
        }
        double at = RowLabel.draw(
                canvas,
                "Crop",
                "rows close " + DayScale.words(canopy.closed())
                        + (calendar.stages().isEmpty() ? "" : "; stages by heat"),
                label,
                y);
        double ground = at + 18 + HIGH;
        double up = days.x(days.held(canopy.up()));
        double closed = days.x(days.held(canopy.closed()));
        canvas.area(
                List.of(
                        new double[] {up, ground},
                        new double[] {closed, ground - HIGH},
                        new double[] {days.right(), ground - HIGH},
                        new double[] {days.right(), ground}),
                LEAF,
                0.3);
        canvas.line(days.left(), ground, days.right(), ground, Canvas.INK, 0.8);
        double free = days.left() - 99;
        for (SeasonCalendar.Stage stage : calendar.stages()) {
            if (!days.holds(stage.day())) {
                continue;
            }
            double x = days.x(stage.day());
            double half = Lettering.width(stage.word(), SeasonPicture.SMALL, false) / 2;
            if (x - half > free + 3) {
                canvas.text(x, at + 13, stage.word(), SeasonPicture.SMALL, Canvas.INK, false, Anchor.MIDDLE);
                canvas.line(x, at + 16, x, ground, LEAF, 1);
                free = x + half;
            }
        }
        return critical(canvas, calendar, days, label, ground + 2);
    }

    private static double critical(Canvas canvas, SeasonCalendar calendar, DayScale days, double label, double y) {
        SeasonCalendar.Critical critical = calendar.critical();
        String words = critical == null
                ? "weeds never cost 5 % here"
                : critical.empty()
                        ? "one clean day from " + DayScale.words(critical.end()) + " to "
                                + DayScale.words(critical.begin())
                        : DayScale.words(critical.begin()) + " to " + DayScale.words(critical.end());
        double at = RowLabel.draw(canvas, "Free of weeds", words + ", to lose under 5 %", label, y);
        double bar = at + 12;
        if (critical != null) {
            double begin = days.x(days.held(critical.begin()));
            double end = days.x(days.held(critical.end()));
            canvas.line(Math.min(begin, end), bar, Math.max(begin, end), bar, "#B36B00", critical.empty() ? 1.5 : 4);
            canvas.line(begin, bar - 5, begin, bar + 5, "#B36B00", 1.5);
            canvas.line(end, bar - 5, end, bar + 5, "#B36B00", 1.5);
        }
        return label > 0 ? y + 46 : bar + 10;
    }
}
