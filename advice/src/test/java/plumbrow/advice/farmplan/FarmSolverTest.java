package plumbrow.advice.farmplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import plumbrow.advice.farmplan.FarmProblem.Limit;
import plumbrow.advice.farmplan.FarmSolver.Solution;

/** The solver against trying every choice, tier and way to buy on small farms. */
class FarmSolverTest {
    private static final int CASES = 100;

    @Test
    void equalsTryingEveryChoice() {
        SplittableRandom random = new SplittableRandom(20_261_125L);
        int possible = 0;
        int bound = 0;
        int rows = 0;
        for (int i = 0; i < CASES; i++) {
            FarmProblem problem = RandomFarm.of(random, 2 + random.nextInt(4), 2 + random.nextInt(3), 20);
            Solution found = FarmSolver.solve(problem);
            EveryChoice every = EveryChoice.of(problem);
            assertThat(found.possible()).as("case " + i).isEqualTo(every.possible());
            if (every.possible()) {
                possible++;
                double most = Math.max(1, Math.abs(every.best()));
                assertThat(found.mean()).as("case " + i).isCloseTo(every.best(), within(1e-6 * most));
                assertThat(found.gap()).isLessThan(1e-6);
                shedFirst(problem, found);
                double free = FarmSolver.solve(without(problem)).mean();
                bound += free > found.mean() + 1e-3 ? 1 : 0;
                rows += found.rows() > 0 ? 1 : 0;
                if (problem.floor() != null) {
                    assertThat(found.worstTenth())
                            .isGreaterThanOrEqualTo(problem.floor() - 1e-5 * Math.abs(problem.floor()) - 1e-3);
                }
            }
        }
        assertThat(possible).isBetween(30, 99);
        assertThat(bound).isGreaterThan(20);
        assertThat(rows).isGreaterThanOrEqualTo(20);
    }

    /** Nothing is bought while any lies in the shed. */
    private static void shedFirst(FarmProblem problem, Solution found) {
        for (int g = 0; g < problem.goods().size(); g++) {
            double used = 0;
            for (int f = 0; f < found.chosen().length; f++) {
                used += problem.places().get(f).options().get(found.chosen()[f]).goods()[g];
            }
            double onHand = problem.goods().get(g).onHand();
            assertThat(found.own()[g]).isCloseTo(Math.min(onHand, used), within(1e-4));
            if (used <= onHand) {
                assertThat(found.quantities()[g]).isCloseTo(0, within(1e-4));
            }
        }
    }

    private static FarmProblem without(FarmProblem problem) {
        return new FarmProblem(
                problem.places(),
                problem.limits().stream()
                        .map(limit -> new Limit(limit.name(), 1e9))
                        .toList(),
                problem.goods(),
                null,
                null);
    }

    @Test
    void aLargeFarmIsProvenWithinOnePercent() {
        FarmProblem problem = RandomFarm.of(new SplittableRandom(9), 120, 8, 100);
        Solution found = FarmSolver.solve(problem);
        assertThat(found.possible()).isTrue();
        assertThat(found.gap()).isLessThan(0.01);
        assertThat(found.chosen()).hasSize(120);
        assertThat(FarmSolver.solve(problem).chosen()).isEqualTo(found.chosen());
        assertThat(Arrays.stream(found.quantities()).sum()
                        + Arrays.stream(found.own()).sum())
                .isPositive();
    }
}
