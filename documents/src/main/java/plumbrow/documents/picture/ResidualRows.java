package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.calendar.SeasonCalendar;
import plumbrow.documents.picture.Canvas.Anchor;

/** What each soil herbicide still holds: control of each day's seedlings, 0 to 100 %, a line for each weed, named where it is highest. */
final class ResidualRows {
    private static final double HIGH = 40;
    private static final List<String> COLOURS = List.of("#0072B2", "#D55E00", "#009E73", "#A0527F");
    private static final List<String> DASHES = List.of("", "6,3", "2,3", "8,3,2,3");

    private ResidualRows() {}

    static double draw(Canvas canvas, SeasonCalendar calendar, DayScale days, double label, double y) {
        double at = y + 4;
        for (SeasonCalendar.Residual residual : calendar.residuals()) {
            at = row(canvas, calendar, residual, days, label, at);
        }
        return at;
    }

    private static double row(
            Canvas canvas,
            SeasonCalendar calendar,
            SeasonCalendar.Residual residual,
            DayScale days,
            double label,
            double y) {
        double begins = RowLabel.draw(
                canvas, residual.pass() + " · " + residual.name(), "% of a day’s seedlings it stops", label, y);
        double ground = Math.max(begins + 8 + HIGH, y + HIGH + 10);
        canvas.line(days.left(), ground, days.right(), ground, Canvas.INK, 0.8);
        canvas.dashed(days.left(), ground - HIGH, days.right(), ground - HIGH, Canvas.HAIRLINE, 0.8, "2,3");
        double free = ground - HIGH - 1;
        for (int j = 0; j < residual.controlPct().size(); j++) {
            double[] control = residual.controlPct().get(j);
            int best = best(control);
            if (control[best] < 1) {
                continue;
            }
            List<double[]> points = new ArrayList<>();
            int end = control.length;
            while (end > 0 && control[end - 1] == 0) {
                end--;
            }
            for (int i = 0; i < end; i++) {
                points.add(new double[] {days.x(i), ground - control[i] / 100 * HIGH});
            }
            String colour = COLOURS.get(j % COLOURS.size());
            canvas.trail(points, colour, 1.8, DASHES.get(j % DASHES.size()));
            int half = half(control, best);
            double x = days.x(half) + 6;
            double level = Math.max(free + 12, ground - control[half] / 100 * HIGH);
            free = level;
            String words = "on " + calendar.weeds().get(j).name() + ", best " + Math.round(control[best]) + " %";
            double wide = Lettering.width(words, SeasonPicture.SMALL, false);
            boolean fits = x + wide < days.right();
            canvas.labelled(
                    fits ? x : days.right(),
                    Math.min(ground - 2, level),
                    words,
                    SeasonPicture.SMALL,
                    colour,
                    false,
                    fits ? Anchor.START : Anchor.END);
        }
        return ground + 8;
    }

    private static int best(double[] control) {
        int best = 0;
        for (int i = 0; i < control.length; i++) {
            best = control[i] > control[best] ? i : best;
        }
        return best;
    }

    /** The day after the best one on which it has fallen by a quarter, where there is room for its name. */
    private static int half(double[] control, int best) {
        int day = best;
        while (day < control.length - 1 && control[day] > control[best] * 0.75) {
            day++;
        }
        return day;
    }
}
