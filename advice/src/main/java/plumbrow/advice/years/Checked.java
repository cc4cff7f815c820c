package plumbrow.advice.years;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/**
 * What the gates say of the programs of a rotation, each with the crop of the next one to follow.
 *
 * @param findings what bars, and all that plant-back and carry-over do not clear
 */
record Checked(Standing standing, List<Finding> findings) {
    private static final Set<String> BETWEEN_YEARS = Set.of("plant-back", "carry-over");

    static Checked of(Season season, Field field, Rotation rotation) {
        List<Finding> all = new ArrayList<>();
        List<Rotation.Step> steps = rotation.steps();
        for (int i = 0; i < steps.size(); i++) {
            Season now = StandIn.season(season, field, steps.get(i));
            Season then = StandIn.season(season, field, steps.get((i + 1) % steps.size()));
            Season followed = StandIn.followedBy(
                    now,
                    field,
                    grown(then, field).crop(),
                    program(then, field, steps.get((i + 1) % steps.size()).program()));
            all.addAll(Gates.check(
                    followed,
                    grown(followed, field),
                    program(followed, field, steps.get(i).program())));
        }
        return new Checked(
                Gates.standing(all),
                all.stream()
                        .filter(finding -> finding.standing() == Standing.BARRED
                                || (BETWEEN_YEARS.contains(finding.gate()) && finding.standing() != Standing.CLEAR))
                        .distinct()
                        .toList());
    }

    private static Field grown(Season season, Field field) {
        return season.field(field.name()).orElseThrow();
    }

    private static Program program(Season season, Field field, String name) {
        return season.programs(field.name()).stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
