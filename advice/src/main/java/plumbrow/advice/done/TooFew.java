package plumbrow.advice.done;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/**
 * Which passes were not made because scouting found too few: by lines of the log with rate 0. A line answers one pass of a program, the
 * one a person said, else the pass of its product that waits for a count and is planned nearest, at most {@value #DAYS} days away or
 * without a day. What was decided so is decided: nobody asks, sprays or pays for that pass any more.
 */
public final class TooFew {
    private static final int DAYS = 30;

    private TooFew() {}

    /** The line that answers a pass, by the number of the pass. */
    public static Map<Integer, Done> of(Season season, Field field, Program program) {
        Map<Integer, Done> answered = new HashMap<>();
        LocalDate from = DoneWork.seasonStart(season.year(), field.crop());
        for (Done line : season.work().tooFew(field.name())) {
            if (!line.date().isBefore(from)) {
                pass(season, program, line, answered).ifPresent(pass -> answered.put(pass.number(), line));
            }
        }
        return answered;
    }

    private static Optional<Pass> pass(Season season, Program program, Done line, Map<Integer, Done> answered) {
        List<Pass> open = program.passes().stream()
                .filter(pass -> pass.trigger() != null
                        && line.product().equals(pass.product())
                        && !answered.containsKey(pass.number()))
                .toList();
        MeantPass said = line.meant();
        if (said != null && said.none()) {
            return Optional.empty();
        }
        if (said != null && program.name().equals(said.program())) {
            return open.stream().filter(pass -> pass.number() == said.pass()).findFirst();
        }
        LocalDate day = DoneWork.meantPass(season, line).map(Pass::date).orElse(line.date());
        return open.stream()
                .filter(pass -> apart(pass, day) <= DAYS)
                .min(Comparator.comparingLong(pass -> apart(pass, day)));
    }

    private static long apart(Pass pass, LocalDate day) {
        LocalDate planned = pass.date();
        return planned == null ? 0 : Math.abs(ChronoUnit.DAYS.between(planned, day));
    }
}
