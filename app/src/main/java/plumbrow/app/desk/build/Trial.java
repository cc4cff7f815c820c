package plumbrow.app.desk.build;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.desk.Weighings;

/**
 * What a program that is being put together would cost and do, by the same check and comparison as all others.
 *
 * @param name its name
 * @param weighed what it costs and brings; null where the season lacks something for that
 * @param advice the advice with it among the programs; null likewise
 * @param gap what the season lacks, in a sentence; empty for nothing
 * @param standing the worst of its findings
 * @param findings what stands in its way or is not known, worst first
 */
public record Trial(
        String name,
        @Nullable WeighedProgram weighed,
        @Nullable FieldAdvice advice,
        String gap,
        Standing standing,
        List<Finding> findings) {
    /** Few enough that the answer comes while somebody types. */
    private static final int DRAWS = 1_000;

    static Trial of(Weighings weighings, Season with, Field field, String name) {
        List<Finding> all = Gates.check(
                with,
                field,
                with.programs(field.name()).stream()
                        .filter(program -> program.name().equals(name))
                        .findFirst()
                        .orElseThrow());
        Standing standing = Gates.standing(all);
        List<Finding> wrong = all.stream()
                .filter(finding -> finding.standing() != Standing.CLEAR)
                .sorted(Comparator.comparing(Finding::standing).reversed())
                .toList();
        try {
            FieldAdvice advice =
                    weighings.field(FieldSeasons.of(with, field), field, WeighingOptions.DEFAULT.withDraws(DRAWS));
            return new Trial(name, advice.program(name).orElse(null), advice, "", standing, wrong);
        } catch (SeasonGapException gap) {
            return new Trial(name, null, null, String.valueOf(gap.getMessage()), standing, wrong);
        }
    }

    public List<Finding> barred() {
        return of(Standing.BARRED);
    }

    public List<Finding> conditional() {
        return of(Standing.CONDITIONAL);
    }

    public List<Finding> unknown() {
        return of(Standing.UNKNOWN);
    }

    private List<Finding> of(Standing which) {
        return findings.stream().filter(finding -> finding.standing() == which).toList();
    }
}
