package plumbrow.documents.machine.log;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.ratemap.Metering;

/**
 * What a machine wrote down of its work: one task, or a table of points.
 *
 * @param task its name, {@code field} and {@code worker} theirs, each as the machine has it; empty where it has none
 * @param start when it began, {@code end} when it ended, in the machine's own clock; null where it does not say
 * @param acres ground worked; null where it can't be told
 * @param acresFrom where that is from, in words; empty where it can't be told
 * @param totals what was put on, by product
 * @param spots places at which it worked, each with the ground it stands for; at most {@link #MOST_SPOTS}
 * @param notes what whoever uses it has to mind
 */
public record MachineWork(
        String task,
        String field,
        String worker,
        @Nullable Moment start,
        @Nullable Moment end,
        @Nullable Double acres,
        String acresFrom,
        List<Total> totals,
        List<Spot> spots,
        List<String> notes) {
    public static final int MOST_SPOTS = 20_000;

    public MachineWork {
        totals = List.copyOf(totals);
        spots = List.copyOf(spots);
        notes = List.copyOf(notes);
    }

    /** All tasks of a file in which something was done, in their order. */
    public record Log(List<MachineWork> works) {
        public Log {
            works = List.copyOf(works);
        }
    }

    /** A moment of the machine's clock, to the second. */
    public record Moment(LocalDate day, int second) {
        static Moment of(LocalDateTime time) {
            return new Moment(time.toLocalDate(), time.toLocalTime().toSecondOfDay());
        }

        public LocalTime time() {
            return LocalTime.ofSecondOfDay(second);
        }

        public LocalDateTime both() {
            return LocalDateTime.of(day, time());
        }
    }

    /**
     * What was put on of one product.
     *
     * @param product as the machine has it; empty where it has no name
     * @param amount in the metering's farm unit: gallons, pounds or seeds
     * @param from where it is from, in words
     */
    public record Total(String product, Metering metering, double amount, String from) {}

    /** A place at which it worked [degrees], and the ground it stands for [m²]. */
    public record Spot(double longitude, double latitude, double squareMetres) {}
}
