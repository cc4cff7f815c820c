package plumbrow.advice.years;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;

/**
 * Where the rotations of a field lead.
 *
 * @param rotations highest mean present value first
 * @param best the rotation that earns most of those that may be advised; null where none may be
 * @param sentence the answer in one sentence
 * @param assumptions what was taken that the season's sheets do not hold
 * @param cautions sentences that stand beside the answer
 */
public record YearsAhead(
        Field field,
        String grower,
        int firstYear,
        YearsOptions options,
        List<RotationAhead> rotations,
        @Nullable String best,
        String sentence,
        List<Assumption> assumptions,
        List<String> cautions) {
    public YearsAhead {
        rotations = List.copyOf(rotations);
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
    }

    public Optional<RotationAhead> bestRotation() {
        return rotations.stream().filter(one -> one.name().equals(best)).findFirst();
    }
}
