package plumbrow.documents.picture;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import plumbrow.advice.hours.HourRule;
import plumbrow.advice.hours.SprayHour;
import plumbrow.advice.hours.TripHours;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.science.figure.Numbers;

/**
 * The hours of some days: a row a day, a box an hour. A filled box is fit; a hatched one is unknown; an empty one is ruled out and
 * carries the letter of what rules it out first, underlined where it is law.
 */
public final class HoursPicture {
    private static final String FIT = "#0072B2";
    private static final String UNKNOWN = "#8a8a8a";
    private static final double ROW = 26;
    private static final double TOP = 24;
    private static final int HOURS = 24;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE M/d", Locale.US);

    private HoursPicture() {}

    /** The picture, {@code widthPx} wide. */
    public static String svg(TripHours trip, int widthPx) {
        double width = Math.max(300, widthPx);
        double left = width < 500 ? 56 : 74;
        double box = (width - left - 4) / HOURS;
        Canvas canvas = new Canvas();
        for (int hour = 0; hour <= HOURS; hour += width < 500 ? 6 : 3) {
            canvas.text(
                    left + hour * box,
                    TOP - 8,
                    String.valueOf(hour),
                    11,
                    Canvas.QUIET,
                    false,
                    hour == HOURS ? Anchor.END : Anchor.MIDDLE);
        }
        double y = TOP;
        for (Map.Entry<LocalDate, List<SprayHour>> day : trip.byDay().entrySet()) {
            canvas.text(4, y + 17, DAY.format(day.getKey()), 12, Canvas.INK, false, Anchor.START);
            for (SprayHour hour : day.getValue()) {
                box(canvas, hour, left + clock(hour.begin(), trip.zone()) * box, y, box);
            }
            y += ROW;
        }
        double line = y + 16;
        for (String words : Lettering.wrap(legend(trip), 11.5, false, width - 8, 4)) {
            canvas.text(4, line, words, 11.5, Canvas.QUIET, false, Anchor.START);
            line += 15;
        }
        return canvas.svg(width, line - 6, "Hours fit for spraying", trip.sentence());
    }

    private static int clock(Instant at, ZoneId zone) {
        return at.atZone(zone).getHour();
    }

    private static void box(Canvas canvas, SprayHour hour, double x, double y, double wide) {
        double high = ROW - 4;
        String why = hour.why();
        canvas.open(clockWords(hour)
                + hour.standing().word()
                + (why.isEmpty() ? "" : ": " + why)
                + (hour.mind().isEmpty() ? "" : ", " + hour.mind()));
        switch (hour.standing()) {
            case FIT -> canvas.rect(x + .5, y + 1, wide - 1, high - 2, FIT, 1);
            case UNKNOWN -> {
                canvas.rect(x + .5, y + 1, wide - 1, high - 2, Canvas.PAPER, 1);
                canvas.hatch(x + .5, y + 1, wide - 1, high - 2, UNKNOWN, 5);
            }
            case OUT -> {
                canvas.rect(x + .5, y + 1, wide - 1, high - 2, "#f1f1f1", 1);
                canvas.text(
                        x + wide / 2,
                        y + 16,
                        String.valueOf(first(hour).letter()),
                        Math.min(12, wide * .8),
                        hour.unlawful() ? Canvas.INK : Canvas.QUIET,
                        hour.unlawful(),
                        Anchor.MIDDLE);
                if (hour.unlawful()) {
                    canvas.line(x + 2, y + high - 3, x + wide - 2, y + high - 3, Canvas.INK, 1.4);
                }
            }
        }
        canvas.frame(x + .5, y + 1, wide - 1, high - 2, Canvas.HAIRLINE, .8);
        canvas.close();
    }

    private static String clockWords(SprayHour hour) {
        Double boom = hour.windBoomMph();
        Double station = hour.weather().windMph();
        return boom == null || station == null
                ? ""
                : "wind " + Numbers.fixed(boom, 1) + " mph at the boom, " + Numbers.fixed(station, 1)
                        + " at the station; ";
    }

    /** What is told first of an hour: law before good practice. */
    private static HourRule.Kind first(SprayHour hour) {
        return hour.out().stream()
                .filter(said -> !hour.unlawful() || said.rule().whose() != HourRule.Whose.PRACTICE)
                .findFirst()
                .orElse(hour.out().get(0))
                .rule()
                .kind();
    }

    private static String legend(TripHours trip) {
        Set<HourRule.Kind> shown = EnumSet.noneOf(HourRule.Kind.class);
        trip.hours().stream()
                .filter(hour -> hour.standing() == SprayHour.Standing.OUT)
                .forEach(hour -> shown.add(first(hour)));
        String letters =
                shown.stream().map(kind -> kind.letter() + " " + kind.word()).collect(Collectors.joining(" · "));
        return "Filled: fit. Hatched: unknown, so not fit. Letter: ruled out by "
                + (letters.isEmpty() ? "nothing" : letters) + "; underlined where a label or a state says so.";
    }
}
