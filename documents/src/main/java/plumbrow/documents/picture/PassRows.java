package plumbrow.documents.picture;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.calendar.SeasonCalendar;
import plumbrow.advice.calendar.Window;
import plumbrow.advice.gates.Standing;
import plumbrow.documents.picture.Canvas.Anchor;

/**
 * The passes of a season, a row for each: its mark on its day, and the days on which the gates let it be made. Barred days are
 * hatched, days of which something is unknown are dashed, all others a full line.
 */
final class PassRows {
    private static final String MAY = "#007A5A"; // bluish green of Okabe and Ito, darker
    private static final double HIGH = 36;
    private static final double REACH = 8;

    private final SeasonCalendar calendar;
    private final DayScale days;
    private final double label;
    private final List<SeasonPicture.Handle> handles = new ArrayList<>();

    PassRows(SeasonCalendar calendar, DayScale days, double label) {
        this.calendar = calendar;
        this.days = days;
        this.label = label;
    }

    List<SeasonPicture.Handle> handles() {
        return handles;
    }

    double draw(Canvas canvas, double y) {
        double at = y + 6;
        for (SeasonCalendar.Mark pass : calendar.passes()) {
            at = row(canvas, pass, at);
        }
        return at;
    }

    /** A line for each pass from the top down to its mark, to lie under everything else. */
    void lines(Canvas canvas, double top) {
        for (SeasonPicture.Handle handle : handles) {
            canvas.line(handle.x(), top, handle.x(), handle.y(), Canvas.INK, 0.7);
        }
    }

    private double row(Canvas canvas, SeasonCalendar.Mark pass, double y) {
        LocalDate date = pass.date();
        double begins = RowLabel.draw(
                canvas, pass.words(), date == null ? "no day planned; look up: when it is to be made" : "", label, y);
        double middle = begins + HIGH / 2;
        for (Window window : calendar.windows()) {
            if (window.pass() == pass.pass()
                    && !window.to().isBefore(days.first())
                    && !window.from().isAfter(days.last())) {
                window(canvas, window, middle);
            }
        }
        if (date != null && days.holds(date)) {
            mark(canvas, pass, date, middle);
        } else if (date != null) {
            canvas.labelled(
                    days.left(), middle + 4, "on " + date + ", before these days", 11, Canvas.INK, false, Anchor.START);
        }
        return Math.max(y, begins) + HIGH + (label > 0 ? 4 : 6);
    }

    private void window(Canvas canvas, Window window, double middle) {
        double half = days.perDay() / 2;
        double from = Math.max(days.left(), days.x(days.held(window.from())) - half);
        double to = Math.min(days.right(), days.x(days.held(window.to())) + half);
        canvas.open(DayScale.words(window.from()) + " to " + DayScale.words(window.to()) + ": "
                + (window.standing() == Standing.CLEAR
                        ? "no check bars it"
                        : window.standing().word() + ": " + window.reason()));
        switch (window.standing()) {
            case BARRED -> {
                canvas.hatch(from, middle - 7, to - from, 14, Canvas.INK, 5);
                canvas.frame(from, middle - 7, to - from, 14, Canvas.INK, 0.6);
                word(canvas, "barred", from, to, middle);
            }
            case UNKNOWN -> {
                canvas.dashed(from, middle, to, middle, Canvas.QUIET, 2, "3,4");
                word(canvas, "unknown", from, to, middle);
            }
            default -> canvas.line(from, middle, to, middle, MAY, 4);
        }
        canvas.close();
    }

    private static void word(Canvas canvas, String word, double from, double to, double middle) {
        if (to - from > Lettering.width(word, 11, false) + 10) {
            canvas.labelled((from + to) / 2, middle + 4, word, 11, Canvas.INK, false, Anchor.MIDDLE);
        }
    }

    private void mark(Canvas canvas, SeasonCalendar.Mark pass, LocalDate date, double middle) {
        double x = days.x(date);
        LocalDate made = pass.made();
        canvas.open(pass.words() + " on " + DayScale.words(date));
        if (made != null && made.isAfter(date) && days.holds(made)) {
            canvas.line(x, middle, days.x(made), middle, Canvas.INK, 2.4);
            canvas.line(days.x(made), middle - 5, days.x(made), middle + 5, Canvas.INK, 1.6);
        }
        canvas.diamond(x, middle, REACH, Canvas.INK, Canvas.PAPER);
        canvas.close();
        String words = DayScale.words(date);
        boolean before = x + 70 > days.right();
        canvas.labelled(
                before ? x - REACH - 3 : x + REACH + 3 + (made == null ? 0 : Math.max(0, days.x(days.held(made)) - x)),
                middle - 6,
                words,
                12,
                Canvas.INK,
                true,
                before ? Anchor.END : Anchor.START);
        handles.add(new SeasonPicture.Handle(pass.pass(), x, middle));
    }
}
