package plumbrow.advice.calendar;

import java.time.LocalDate;
import plumbrow.advice.gates.Standing;

/**
 * Days on which the gates say the same of a pass, all other passes left where they are.
 *
 * @param pass number of the pass in the program as kept
 * @param from first day, {@code to} last day
 * @param standing barred, unknown, or clear where neither (conditions may still be asked)
 * @param gate id of the gate that says so; empty where clear
 * @param reason what bars it or must be looked up; empty where clear
 */
public record Window(int pass, LocalDate from, LocalDate to, Standing standing, String gate, String reason) {
    Window of(int number) {
        return new Window(number, from, to, standing, gate, reason);
    }

    boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }
}
