package plumbrow.advice.done;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;

/**
 * Which passes of a program the log fulfils. A line of the log is one application and fulfils one pass at most:
 *
 * <ol>
 *   <li>the pass that a person said it was, or none where he said so; in another program the open pass of its product that is planned
 *       for the same day as that one;
 *   <li>else a pass of its product planned for its very day, whatever the rate;
 *   <li>else the open pass of its product that was planned from {@value #DAYS_LATE} days before to {@value #DAYS_EARLY} days
 *       after its day, at a rate from half of its own to double: a pass without a day or rate is not clear;
 *   <li>of several such, the one planned for a day at least {@value #CLEARLY_NEARER} days nearer than all others; else it is
 *       not clear which, and it fulfils none until somebody says so.
 * </ol>
 *
 * <p>The days and the factor are common practice, no source.
 *
 * @param done the line that fulfils a pass, by the number of the pass
 * @param unclear lines that may fulfil a pass of the program, with the passes
 * @param further lines that fulfil no pass of the program, those of which it is not clear among them, by day
 */
public record Fulfilled(Map<Integer, Done> done, Map<Done, List<Pass>> unclear, List<Done> further) {
    static final int DAYS_LATE = 14;
    static final int DAYS_EARLY = 5;
    static final int CLEARLY_NEARER = 7;
    /** Farther from its plan than this it is taken for an application by itself [d]. */
    private static final int PERHAPS_DAYS = 30;

    private static final double SAME_RATE = 2;

    public Fulfilled {
        done = Map.copyOf(done);
        unclear = Map.copyOf(unclear);
        further = List.copyOf(further);
    }

    /**
     * What the log fulfils of a program.
     *
     * @param lines of the log for this season's crop on the field of the program
     */
    public static Fulfilled of(Program program, List<Done> lines) {
        return of(program, lines, line -> Optional.empty());
    }

    /** @param meant the pass that a person said a line was, where it is one of another program */
    static Fulfilled of(Program program, List<Done> lines, Function<Done, Optional<Pass>> meant) {
        Map<Integer, Done> done = new HashMap<>();
        Map<Done, List<Pass>> unclear = new HashMap<>();
        List<Done> left = new ArrayList<>(lines);
        left.sort(Comparator.comparing(Done::date).thenComparing(Done::product));
        List<Pass> open = new ArrayList<>(program.passes().stream()
                .filter(pass -> pass.product() != null)
                .sorted(Comparator.comparingInt(Pass::number))
                .toList());
        List<Done> none = left.stream()
                .filter(line -> line.meant() != null && line.meant().none())
                .toList();
        left.removeAll(none);
        take(open, left, done, (line, passes) -> said(program, line, passes, meant));
        take(open, left, done, Fulfilled::sameDay);
        take(open, left, done, (line, passes) -> nearest(line, passes));
        for (Done line : left) {
            List<Pass> perhaps = open.stream()
                    .filter(pass -> line.product().equals(pass.product()) && perhaps(line, pass.date()))
                    .toList();
            if (!perhaps.isEmpty()) {
                unclear.put(line, perhaps);
            }
        }
        left.addAll(none);
        left.sort(Comparator.comparing(Done::date).thenComparing(Done::product));
        return new Fulfilled(done, unclear, left);
    }

    private static Optional<Pass> said(
            Program program, Done line, List<Pass> open, Function<Done, Optional<Pass>> meant) {
        MeantPass said = line.meant();
        if (said == null) {
            return Optional.empty();
        }
        if (program.name().equals(said.program())) {
            return open.stream().filter(pass -> pass.number() == said.pass()).findFirst();
        }
        return meant.apply(line)
                .flatMap(own -> open.stream()
                        .filter(pass -> Objects.equals(pass.date(), own.date()))
                        .findFirst());
    }

    /** Says which of the open passes a line fulfils. */
    @FunctionalInterface
    private interface Which {
        Optional<Pass> of(Done line, List<Pass> open);
    }

    private static void take(List<Pass> open, List<Done> left, Map<Integer, Done> done, Which which) {
        for (Done line : List.copyOf(left)) {
            List<Pass> fitting = open.stream()
                    .filter(pass -> line.product().equals(pass.product()))
                    .toList();
            which.of(line, fitting).ifPresent(pass -> {
                done.put(pass.number(), line);
                open.remove(pass);
                left.remove(line);
            });
        }
    }

    private static Optional<Pass> sameDay(Done line, List<Pass> open) {
        return open.stream().filter(pass -> line.date().equals(pass.date())).findFirst();
    }

    private static Optional<Pass> nearest(Done line, List<Pass> open) {
        List<Pass> fitting = open.stream()
                .filter(pass -> near(line, pass.date()) && alike(line.rate(), pass.rate()))
                .sorted(Comparator.comparingLong(pass -> apart(line, pass)))
                .toList();
        boolean clear = fitting.size() == 1
                || (fitting.size() > 1 && apart(line, fitting.get(1)) - apart(line, fitting.get(0)) >= CLEARLY_NEARER);
        return clear ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    private static boolean near(Done line, @Nullable LocalDate planned) {
        if (planned == null) {
            return false;
        }
        long late = ChronoUnit.DAYS.between(planned, line.date());
        return late <= DAYS_LATE && late >= -DAYS_EARLY;
    }

    private static boolean perhaps(Done line, @Nullable LocalDate planned) {
        return planned == null || Math.abs(ChronoUnit.DAYS.between(planned, line.date())) <= PERHAPS_DAYS;
    }

    /** Days between a line and the plan of a pass; as good as never where it has none. */
    private static long apart(Done line, Pass pass) {
        LocalDate planned = pass.date();
        return planned == null ? Long.MAX_VALUE : Math.abs(ChronoUnit.DAYS.between(planned, line.date()));
    }

    private static boolean alike(Amount put, @Nullable Amount planned) {
        if (planned == null || !planned.comparableWith(put)) {
            return false;
        }
        double ratio = put.inBase() / planned.inBase();
        return ratio <= SAME_RATE * (1 + 1e-9) && ratio >= (1 - 1e-9) / SAME_RATE;
    }
}
