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
 * @param nowAndLater where the comparison of this season alone names another program: which, and why; empty where it does not
 * @param decides which of the assumptions decide most, in one sentence; empty where none was made
 * @param assumptions what was taken that the season's sheets do not hold, the most deciding first
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
        String nowAndLater,
        String decides,
        List<Assumption> assumptions,
        List<String> cautions) {
    public YearsAhead {
        rotations = List.copyOf(rotations);
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
    }

    /** One sentence to stand beside the comparison of this season: what the seasons to come make of it. */
    public String besideOneSeason() {
        if (!nowAndLater.isEmpty()) {
            return nowAndLater;
        }
        return best == null
                ? "Over " + options.seasons() + " seasons none of the programs can be advised yet."
                : "Over " + options.seasons() + " seasons, each program repeated, the same earns most as in "
                        + firstYear + " alone: " + best + ".";
    }

    public Optional<RotationAhead> bestRotation() {
        return rotations.stream().filter(one -> one.name().equals(best)).findFirst();
    }
}
