package plumbrow.advice.means;

import java.time.LocalDate;

/**
 * Days between which one kind of work is done on a farm, and the hours of it that are fit.
 *
 * @param name what it is called, once in a farm
 * @param from first day
 * @param until last day, itself included
 * @param fitDays days in it that are fit for this work
 * @param hoursPerDay fit hours on such a day for one machine [h]
 */
public record WorkWindow(
        String farm,
        String name,
        MachineKind kind,
        LocalDate from,
        LocalDate until,
        double fitDays,
        double hoursPerDay,
        String source) {
    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(until);
    }
}
