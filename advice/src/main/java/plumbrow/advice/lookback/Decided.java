package plumbrow.advice.lookback;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A program that was chosen for a field, with what was expected then.
 *
 * @param who who chose it
 * @param chanceBeatsBaseline chance stated then that it earns more than the baseline; null where it was not weighed
 * @param meanMarginUsdPerAcre mean margin stated then [$/ac]; null likewise
 * @param expected of every program; empty for choices of before that was written down
 */
public record Decided(
        int year,
        String field,
        String program,
        String who,
        @Nullable Double chanceBeatsBaseline,
        @Nullable Double meanMarginUsdPerAcre,
        List<Expectation> expected) {
    public Decided {
        expected = List.copyOf(expected);
    }

    /** What was expected of a program. */
    public Optional<Expectation> of(String name) {
        return expected.stream().filter(one -> one.program().equals(name)).findFirst();
    }

    /** The program that was next best by its mean margin then, among those not barred. */
    public Optional<Expectation> next() {
        return expected.stream()
                .filter(one -> !one.program().equals(program) && !one.barred())
                .max(Comparator.comparingDouble(Expectation::meanMarginUsdPerAcre));
    }
}
