package plumbrow.app.desk.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.app.book.Choice;
import plumbrow.app.desk.FieldAnswer;
import plumbrow.app.desk.shown.Shown;

/**
 * The one thing that a field wants of somebody.
 *
 * @param text what, in few words
 * @param address where it is done
 * @param days until the day that is due, below 0 where it is past; null where none is
 */
public record Wanted(
        Status status,
        String text,
        String address,
        @Nullable Long days) {
    /** Passes due within so many days are told. */
    private static final int AHEAD = 14;

    /** Passes as long past as this are told as late, older ones are not. */
    private static final int BEHIND = 30;

    /** Kinds of wants, what presses most first. */
    public enum Status {
        DUE("due", "a day is due"),
        UNKNOWN("unknown", "to look up"),
        LACKING("lacking", "to enter"),
        TIE("tie", "about equal"),
        UNDECIDED("undecided", "to decide"),
        SETTLED("settled", "settled");

        private final String word;
        private final String words;

        Status(String word, String words) {
            this.word = word;
            this.words = words;
        }

        /** How it stands in an address. */
        public String word() {
            return word;
        }

        public String words() {
            return words;
        }
    }

    /**
     * What a field wants.
     *
     * @param seasons the season cut by fields
     * @param chosen decided last; null where nothing is
     */
    static Wanted of(FieldSeasons seasons, FieldAnswer answer, @Nullable Choice chosen, LocalDate today) {
        Field field = answer.field();
        String page = "/fields/" + Shown.part(field.name());
        if (chosen != null) {
            Optional<Wanted> due = seasons.programs(field).stream()
                    .filter(program -> program.name().equals(chosen.program()))
                    .findFirst()
                    .flatMap(program -> due(seasons, field, program, today, page));
            return due.orElseGet(() -> new Wanted(Status.SETTLED, "", page + "/plan", null));
        }
        if (answer.lacking()) {
            return new Wanted(Status.LACKING, "enter what is lacking", page + "/enter", null);
        }
        if (answer.advised() == null) {
            return new Wanted(Status.UNKNOWN, "look up what stands in the way", page + "/check", null);
        }
        return answer.tied()
                ? new Wanted(Status.TIE, "choose: about equal", page + "/weighing", null)
                : new Wanted(Status.UNDECIDED, "decide", page + "/weighing", null);
    }

    /** The first pass of a program that the log has not and that is near. */
    private static Optional<Wanted> due(
            FieldSeasons seasons, Field field, Program program, LocalDate today, String page) {
        List<Pass> near = program.passes().stream()
                .filter(pass -> pass.date() != null && pass.product() != null)
                .filter(pass -> near(pass, today))
                .sorted(Comparator.comparing(pass -> String.valueOf(pass.date())))
                .toList();
        if (near.isEmpty()) {
            return Optional.empty();
        }
        DoneWork done = DoneWork.of(seasons.of(field), field);
        return near.stream()
                .filter(pass -> !done.isDone(program, pass))
                .findFirst()
                .map(pass -> {
                    long days = days(pass, today);
                    String when = days == 0
                            ? "today"
                            : days > 0
                                    ? "in " + Shown.count((int) days, "day")
                                    : Shown.count((int) -days, "day") + " late";
                    return new Wanted(Status.DUE, pass.product() + " " + when, page + "/plan", days);
                });
    }

    private static boolean near(Pass pass, LocalDate today) {
        long days = days(pass, today);
        return days <= AHEAD && days >= -BEHIND;
    }

    private static long days(Pass pass, LocalDate today) {
        LocalDate day = pass.date();
        return day == null ? Long.MAX_VALUE : ChronoUnit.DAYS.between(today, day);
    }
}
