package plumbrow.advice.calendar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.TillageWork;

/** Puts a program and the rows that hang on it into a season, or takes them out. */
final class SeasonParts {
    private SeasonParts() {}

    /** The program in the place of the kept one; its rows where those of the kept one stood. */
    static Season replaced(Season season, Program kept, ChangedProgram changed) {
        List<Program> programs = season.programs().stream()
                .map(program -> program.equals(kept) ? changed.program() : program)
                .toList();
        return with(
                said(season, kept, changed),
                programs,
                inPlace(season.work().sprayPlans(), changed.plans(), plan -> of(plan.field(), plan.program(), kept)),
                inPlace(
                        season.pests().weedBook().tillage(),
                        changed.tillage(),
                        work -> of(work.field(), work.program(), kept)));
    }

    /** The program after all others. */
    static Season added(Season season, ChangedProgram changed) {
        return with(
                season,
                and(season.programs(), List.of(changed.program())),
                and(season.work().sprayPlans(), changed.plans()),
                and(season.pests().weedBook().tillage(), changed.tillage()));
    }

    /** The season without a program and all that hangs on it. */
    static Season without(Season season, Program program) {
        return with(
                told(season, program, line -> line.meaning(null)),
                season.programs().stream().filter(one -> !one.equals(program)).toList(),
                season.work().sprayPlans().stream()
                        .filter(plan -> !of(plan.field(), plan.program(), program))
                        .toList(),
                season.pests().weedBook().tillage().stream()
                        .filter(work -> !of(work.field(), work.program(), program))
                        .toList());
    }

    /** What was said of lines of the log goes with the passes that change numbers. */
    private static Season said(Season season, Program kept, ChangedProgram changed) {
        Map<Integer, Integer> now = new HashMap<>();
        changed.keptNumbers().forEach((number, before) -> now.put(before, number));
        return told(season, kept, line -> {
            MeantPass meant = Objects.requireNonNull(line.meant());
            return line.meaning(new MeantPass(meant.program(), now.getOrDefault(meant.pass(), meant.pass())));
        });
    }

    /** The season with the lines of the log that were passes of a program told otherwise. */
    private static Season told(Season season, Program program, UnaryOperator<Done> otherwise) {
        List<Done> lines = season.work().log().stream()
                .map(line -> line.meant() != null
                                && line.field().equals(program.field())
                                && program.name().equals(line.meant().program())
                        ? otherwise.apply(line)
                        : line)
                .toList();
        return season.withPrograms(season.programs(), season.work().withLog(lines));
    }

    /** All that gates look at for programs of one field: the same findings, sooner. */
    static Season alone(Season season, Field field, List<ChangedProgram> changed) {
        List<SprayPlan> plans =
                changed.stream().flatMap(one -> one.plans().stream()).toList();
        return season.withFields(List.of(field))
                .withPrograms(
                        changed.stream().map(ChangedProgram::program).toList(),
                        season.work().withSprayPlans(plans));
    }

    private static boolean of(String field, String program, Program kept) {
        return field.equals(kept.field()) && program.equals(kept.name());
    }

    /** The new rows one by one where old ones stood, in the order of the old. */
    private static <T> List<T> inPlace(List<T> rows, List<T> changed, Function<T, Boolean> old) {
        List<T> all = new ArrayList<>();
        int next = 0;
        for (T row : rows) {
            all.add(old.apply(row) ? changed.get(next++) : row);
        }
        return all;
    }

    private static <T> List<T> and(List<T> some, List<T> more) {
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    private static Season with(
            Season season, List<Program> programs, List<SprayPlan> plans, List<TillageWork> tillage) {
        return season.withPrograms(programs, season.work().withSprayPlans(plans))
                .withPests(season.pests().withTillage(tillage));
    }
}
