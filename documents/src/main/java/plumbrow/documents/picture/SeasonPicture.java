package plumbrow.documents.picture;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.calendar.SeasonCalendar;
import plumbrow.advice.hours.SeasonHours;
import plumbrow.documents.picture.Canvas.Anchor;

/**
 * The season of a program from before planting to harvest: the crop, its weeds as they come up, what the soil herbicides still hold,
 * the passes and the days on which they may be made, all on one line of days.
 *
 * @param svg the picture
 * @param width of its view box [px], {@code height} likewise
 * @param left where the first day lies [px], {@code right} where the last one does
 * @param handles where each pass stands
 * @param says what it shows, for whoever can't see it
 */
public record SeasonPicture(
        String svg, double width, double height, double left, double right, List<Handle> handles, String says) {
    static final int WIDE = 620;
    static final double SMALL = 11.5;
    private static final int NARROWEST = 320;

    public SeasonPicture {
        handles = List.copyOf(handles);
    }

    /**
     * Where a pass stands.
     *
     * @param x of its mark on its day, {@code y} of its middle [px]
     */
    public record Handle(int pass, double x, double y) {}

    /** The picture, {@code widthPx} wide; below 320 px it is drawn for 320 and scaled. */
    public static SeasonPicture of(SeasonCalendar calendar, int widthPx) {
        double width = Math.max(NARROWEST, widthPx);
        boolean wide = width >= WIDE;
        double label = wide ? Math.min(260, width * 0.26) : 0;
        DayScale days = new DayScale(calendar.first(), calendar.last(), label + (wide ? 18 : 16), width - 16);
        Canvas rows = new Canvas();
        double top = 22;
        double y = CropRow.draw(rows, calendar, days, label, top);
        double weedsFrom = y;
        if (calendar.followed()) {
            y = WeedRows.draw(rows, calendar, days, label, y);
            y = ResidualRows.draw(rows, calendar, days, label, y);
        }
        double plotEnd = y;
        PassRows passes = new PassRows(calendar, days, label);
        y = passes.draw(rows, y);
        y = hours(rows, calendar, days, label, y);
        Canvas canvas = new Canvas();
        critical(canvas, calendar, days, weedsFrom, plotEnd);
        months(canvas, days, top, y);
        passes.lines(canvas, top + 4);
        canvas.include(rows);
        String says = says(calendar);
        String title = "The season of " + calendar.program() + " on " + calendar.field();
        return new SeasonPicture(
                canvas.svg(width, y + 6, title, says),
                width,
                Math.ceil(y + 6),
                days.left(),
                days.right(),
                passes.handles(),
                says);
    }

    private static void months(Canvas canvas, DayScale days, double top, double bottom) {
        canvas.line(days.left(), top, days.right(), top, Canvas.INK, 1);
        for (LocalDate month = days.first().withDayOfMonth(1);
                !month.isAfter(days.last());
                month = month.plusMonths(1)) {
            LocalDate next = month.plusMonths(1);
            if (days.holds(month)) {
                canvas.line(days.x(month), top - 5, days.x(month), bottom, Canvas.HAIRLINE, 0.8);
            }
            double from = days.x(days.held(month));
            double to = days.x(days.held(next));
            String word = month.getMonth().getDisplayName(java.time.format.TextStyle.SHORT, java.util.Locale.US);
            if (to - from > Lettering.width(word, 12, true) + 4) {
                canvas.text((from + to) / 2, top - 8, word, 12, Canvas.INK, true, Anchor.MIDDLE);
            }
        }
    }

    private static void critical(Canvas canvas, SeasonCalendar calendar, DayScale days, double top, double bottom) {
        SeasonCalendar.Critical critical = calendar.critical();
        if (critical != null && !critical.empty() && days.holds(days.held(critical.begin()))) {
            double from = days.x(days.held(critical.begin()));
            double to = days.x(days.held(critical.end()));
            canvas.rect(from, top, to - from, bottom - top, "#E69F00", 0.13);
        }
    }

    private static double hours(Canvas canvas, SeasonCalendar calendar, DayScale days, double label, double y) {
        double at = RowLabel.draw(canvas, "Hours fit for spraying", "", label, y);
        double room = days.right() - days.left() - 12;
        List<String> lines = Lettering.wrap(calendar.hours().says(), SMALL, false, room, 4);
        double bars = calendar.hours().days().isEmpty() ? 0 : HOUR_BARS;
        hourBars(canvas, calendar, days, at + 4, bars);
        double high = 4 + 15.0 * lines.size();
        if (bars == 0) {
            canvas.hatch(days.left(), at + 4, days.right() - days.left(), high, "#a8a8a8", 7);
        }
        double line = at + 17 + bars;
        for (String words : lines) {
            canvas.labelled(days.left() + 6, line, words, SMALL, Canvas.INK, false, Anchor.START);
            line += 15;
        }
        return at + high + bars + 10;
    }

    /** Fit hours of each day as a bar, unknown ones hatched on top of it; half a day fills the row. */
    private static void hourBars(Canvas canvas, SeasonCalendar calendar, DayScale days, double top, double high) {
        double wide = Math.max(1, days.x(days.first().plusDays(1)) - days.x(days.first()));
        for (SeasonHours.Day day : calendar.hours().days()) {
            if (!days.holds(day.day())) {
                continue;
            }
            double fit = Math.min(high, high * day.fit() / 12);
            double unknown = Math.min(high - fit, high * day.unknown() / 12);
            double x = days.x(day.day());
            canvas.rect(x, top + high - fit, wide, fit, "#0072B2", 1);
            if (unknown > 0) {
                canvas.hatch(x, top + high - fit - unknown, wide, unknown, "#a8a8a8", 4);
            }
        }
        if (high > 0) {
            canvas.line(days.left(), top + high, days.right(), top + high, Canvas.HAIRLINE, .8);
        }
    }

    private static final double HOUR_BARS = 30;

    /** What the picture shows, in words. */
    public static String says(SeasonCalendar calendar) {
        SeasonCalendar.Critical critical = calendar.critical();
        String keep = critical == null
                ? ""
                : critical.empty()
                        ? " One clean day between " + DayScale.words(critical.end()) + " and "
                                + DayScale.words(critical.begin()) + " is enough to lose no more than 5 %."
                        : " To lose no more than 5 % the crop must be free of weeds from "
                                + DayScale.words(critical.begin()) + " to " + DayScale.words(critical.end()) + ".";
        String passes = calendar.passes().stream()
                .map(pass -> {
                    LocalDate date = pass.date();
                    return pass.words() + (date == null ? ", no day planned" : " on " + DayScale.words(date));
                })
                .collect(Collectors.joining("; "));
        return calendar.finding() + keep + " Passes: " + passes + ".";
    }
}
