package plumbrow.advice.today;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.gates.Standing;

/**
 * One day on all fields.
 *
 * @param due what is to be done, the most pressing first
 * @param waits what must be waited for
 * @param machines what each sprayer has before it
 * @param nearest where nothing is due: the day nearest to it on which something is planned; null where nothing is
 * @param sentence the answer
 */
public record Today(
        LocalDate day,
        List<Due> due,
        List<Wait> waits,
        List<OfMachine> machines,
        @Nullable LocalDate nearest,
        String sentence) {
    public Today {
        due = List.copyOf(due);
        waits = List.copyOf(waits);
        machines = List.copyOf(machines);
    }

    /**
     * One trip that is due.
     *
     * @param chosen whether the program was chosen; else it is the baseline
     * @param pass number of its first pass
     * @param what its products, or what is done
     * @param daysLate days since the planned day, negative before it
     * @param standing what the gates say of that day; null where they were not asked
     * @param standingSays why, where it is barred or unknown
     * @param lastDay last day before the gates bar it; null where they bar none of the days looked at
     * @param daysLeft days until then, that day not counted
     * @param fitHours fit hours of that day; null where no weather is on file, or it does not go through the air
     * @param unknownHours hours of that day of which it is not known
     * @param hours when it may go, in words; empty where it does not go through the air
     * @param odds chance of finishing before the window closes, in words; empty where not known
     * @param machine which sprayer, {@code neededHours} hours it takes; null where none is on file
     */
    public record Due(
            String field,
            String farm,
            String program,
            boolean chosen,
            int pass,
            boolean goesOut,
            boolean sprayed,
            String what,
            double acres,
            LocalDate planned,
            long daysLate,
            @Nullable Standing standing,
            String standingSays,
            @Nullable LocalDate lastDay,
            @Nullable Long daysLeft,
            @Nullable Integer fitHours,
            @Nullable Integer unknownHours,
            String hours,
            String odds,
            @Nullable String machine,
            @Nullable Double neededHours) {
        /** Whether the fit hours of that day are enough for it. */
        public boolean hoursEnough() {
            Double needed = neededHours;
            Integer fit = fitHours;
            return fit != null && fit > 0 && fit >= (needed == null ? 1 : needed);
        }

        /** Whether it can go that day: the hours are enough, and no check bars it or lacks something. */
        public boolean canGo() {
            return hoursEnough() && (standing == Standing.CLEAR || standing == Standing.CONDITIONAL);
        }
    }

    /**
     * Something to wait for.
     *
     * @param until when it is over at the latest, in words
     */
    public record Wait(String field, String what, String until, String why) {}

    /**
     * What a sprayer has before it: hours of what is due, and its fit hours that day; null where not known.
     *
     * @param fields where, what presses most first
     */
    public record OfMachine(
            String farm,
            String machine,
            List<String> fields,
            int trips,
            double neededHours,
            @Nullable Integer fitHours) {
        public OfMachine {
            fields = List.copyOf(fields);
        }
    }
}
