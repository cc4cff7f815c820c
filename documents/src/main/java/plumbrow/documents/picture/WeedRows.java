package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumbrow.advice.calendar.SeasonCalendar;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.science.figure.Numbers;

/**
 * Weeds as they come up, a row for each on one scale of seedlings per m² and day. Within what comes up stands what no soil herbicide
 * stopped, and within that what is still there at harvest, each on the day on which it came up.
 */
final class WeedRows {
    static final String UP = "#56B4E9"; // sky blue of Okabe and Ito
    static final String PAST = "#0072B2"; // blue
    static final String LEFT = "#D55E00"; // vermilion
    private static final double HIGH = 52;

    private WeedRows() {}

    static double draw(Canvas canvas, SeasonCalendar calendar, DayScale days, double label, double y) {
        double most = calendar.weeds().stream()
                .flatMapToDouble(weed -> Arrays.stream(weed.sprouted()))
                .max()
                .orElse(0);
        double at = key(canvas, days, y + 4);
        for (SeasonCalendar.Weed weed : calendar.weeds()) {
            at = row(canvas, weed, days, label, most, at);
        }
        return at;
    }

    private static double key(Canvas canvas, DayScale days, double y) {
        double x = days.left();
        double at = y + 12;
        String[][] words = {{UP, "comes up"}, {PAST, "past the soil herbicide"}, {LEFT, "left at harvest"}};
        for (String[] word : words) {
            double wide = 18 + Lettering.width(word[1], SeasonPicture.SMALL, false) + 14;
            if (x > days.left() && x + wide > days.right()) {
                x = days.left();
                at += 15;
            }
            canvas.rect(x, at - 9, 12, 10, word[0], word[0].equals(UP) ? 0.45 : 1);
            canvas.labelled(x + 17, at, word[1], SeasonPicture.SMALL, Canvas.INK, false, Anchor.START);
            x += wide;
        }
        return at + 2;
    }

    private static double row(
            Canvas canvas, SeasonCalendar.Weed weed, DayScale days, double label, double most, double y) {
        double begins = RowLabel.draw(
                canvas,
                Character.toUpperCase(weed.name().charAt(0)) + weed.name().substring(1),
                plants(weed.seedlings()) + " seedlings/m², " + plants(weed.atHarvest()) + " left",
                label,
                y);
        double ground = Math.max(begins + 8 + HIGH, y + HIGH + 8);
        double scale = most <= 0 ? 0 : HIGH / most;
        canvas.open(weed.name() + ": " + plants(weed.seedlings()) + " seedlings/m², " + plants(weed.atHarvest())
                + " left at harvest");
        canvas.area(hill(weed.sprouted(), days, ground, scale), UP, 0.45);
        canvas.area(hill(weed.emerged(), days, ground, scale), PAST, 0.85);
        canvas.area(hill(weed.left(), days, ground, scale), LEFT, 1);
        canvas.close();
        canvas.line(days.left(), ground, days.right(), ground, Canvas.INK, 0.8);
        if (most > 0) {
            canvas.line(days.left() - 4, ground - HIGH, days.left(), ground - HIGH, Canvas.QUIET, 1);
            canvas.labelled(
                    days.left() + 3,
                    ground - HIGH + 4,
                    plants(most) + "/m² a day",
                    10.5,
                    Canvas.QUIET,
                    false,
                    Anchor.START);
        }
        double left = Arrays.stream(weed.left()).max().orElse(0);
        if (weed.atHarvest() >= 0.05) {
            int peak = 0;
            while (weed.left()[peak] < left) {
                peak++;
            }
            double x = Math.max(days.left() + 40, Math.min(days.right() - 40, days.x(peak)));
            canvas.labelled(
                    x,
                    ground - Math.min(HIGH - 12, left * scale + 5),
                    plants(weed.atHarvest()) + " left",
                    SeasonPicture.SMALL,
                    "#A34700",
                    true,
                    Anchor.MIDDLE);
        }
        return ground + 8;
    }

    private static List<double[]> hill(double[] perDay, DayScale days, double ground, double scale) {
        List<double[]> points = new ArrayList<>();
        int from = 0;
        while (from < perDay.length && perDay[from] * scale < 0.05) {
            from++;
        }
        int to = perDay.length - 1;
        while (to > from && perDay[to] * scale < 0.05) {
            to--;
        }
        if (from >= perDay.length) {
            return points;
        }
        points.add(new double[] {days.x(Math.max(0, from - 1)), ground});
        for (int i = from; i <= to; i++) {
            points.add(new double[] {days.x(i), ground - perDay[i] * scale});
        }
        points.add(new double[] {days.x(Math.min(perDay.length - 1, to + 1)), ground});
        return points;
    }

    static String plants(double number) {
        return Numbers.fixed(number, number < 10 ? 1 : 0);
    }
}
