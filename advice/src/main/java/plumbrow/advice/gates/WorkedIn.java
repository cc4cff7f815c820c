package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.shelf.LabelLimit;

/**
 * Whether a tillage pass is the working-in that labels ask for, and so a part of the application: who drives is then a handler
 * and no worker who enters.
 *
 * <p>Source: 40 CFR 170.305, handler (value from memory).
 */
final class WorkedIn {
    private WorkedIn() {}

    /** Least hours between an application and a pass so many days later. */
    static long least(long days) {
        return 24 * Math.max(0, days - 1);
    }

    /** The shortest time in which all of these are to be worked in [h]; none where one of them need not be. */
    static Optional<Double> within(Case at, List<Application> applications) {
        List<Optional<Double>> each = applications.stream()
                .map(one -> at.index().limits(one.product(), at.field().crop(), LabelLimit.Kind.WORKED_IN_H).stream()
                        .flatMap(row -> LabelLimit.number(row.value()).stream().boxed())
                        .min(Double::compare))
                .toList();
        return each.stream().anyMatch(Optional::isEmpty)
                ? Optional.empty()
                : each.stream().flatMap(Optional::stream).min(Double::compare);
    }

    /** Whether tillage on a day may come in time. */
    static boolean may(LocalDate applied, LocalDate tilled, double hours) {
        long days = ChronoUnit.DAYS.between(applied, tilled);
        return days >= 0 && least(days) < hours;
    }
}
