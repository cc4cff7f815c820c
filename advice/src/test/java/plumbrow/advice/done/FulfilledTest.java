package plumbrow.advice.done;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** Which pass a line of the log was. Days and factor are those that {@link Fulfilled} states. */
class FulfilledTest {
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 10);

    private static Program program(LocalDate... planned) {
        List<Pass> passes = new ArrayList<>();
        for (LocalDate day : planned) {
            passes.add(new Pass(
                    passes.size() + 1, PassKind.SPRAY, day, "Ridge", oz(20), 100, 8.5, new Distribution.Fixed(0), 0));
        }
        return new Program("East", "One", true, new RefugePlan(null, null), "", passes);
    }

    private static Amount oz(double value) {
        return new Amount(value, FarmUnit.FL_OZ);
    }

    private static Done line(LocalDate day, double oz) {
        return new Done("East", day, "Ridge", oz(oz), 100, null, "log book");
    }

    /** Days after the plan, rate, and whether it is the pass. */
    @ParameterizedTest
    @CsvSource({
        "0, 20, true",
        "0, 60, true",
        "1, 20, true",
        "14, 20, true",
        "15, 20, false",
        "-5, 20, true",
        "-6, 20, false",
        "1, 40, true",
        "1, 41, false",
        "1, 10, true",
        "1, 9, false"
    })
    void onePassOneLine(int later, double oz, boolean fulfils) {
        Fulfilled fulfilled = Fulfilled.of(program(JUNE), List.of(line(JUNE.plusDays(later), oz)));
        assertThat(fulfilled.done().containsKey(1)).isEqualTo(fulfils);
        assertThat(fulfilled.further()).hasSize(fulfils ? 0 : 1);
        assertThat(fulfilled.unclear()).hasSize(fulfils ? 0 : 1);
    }

    @Test
    void theNearerOfTwoWhereThatIsClear() {
        Program program = program(JUNE, JUNE.plusDays(21));
        assertThat(Fulfilled.of(program, List.of(line(JUNE.plusDays(1), 20))).done())
                .containsOnlyKeys(1);
        assertThat(Fulfilled.of(program, List.of(line(JUNE.plusDays(20), 20))).done())
                .containsOnlyKeys(2);
    }

    /** Ten days between two plans, a line in the middle: nobody can tell, and nothing is guessed. */
    @Test
    void neitherWhereItIsNotClear() {
        Fulfilled fulfilled = Fulfilled.of(program(JUNE, JUNE.plusDays(10)), List.of(line(JUNE.plusDays(5), 20)));
        assertThat(fulfilled.done()).isEmpty();
        assertThat(fulfilled.unclear().values())
                .allSatisfy(passes -> assertThat(passes).hasSize(2))
                .hasSize(1);
        Fulfilled said =
                Fulfilled.of(program(JUNE.plusDays(5), JUNE.plusDays(10)), List.of(line(JUNE.plusDays(5), 20)));
        assertThat(said.done()).containsOnlyKeys(1);
    }

    /** What a person says goes before days and rates: the farther pass, a rate that would not fit, or none at all. */
    @Test
    void whatAPersonSaysItWas() {
        Program program = program(JUNE, JUNE.plusDays(10));
        Done line = line(JUNE.plusDays(1), 50);
        assertThat(Fulfilled.of(program, List.of(line.meaning(new MeantPass("One", 2))))
                        .done())
                .containsOnlyKeys(2);
        Fulfilled none = Fulfilled.of(program, List.of(line.meaning(MeantPass.NONE)));
        assertThat(none.done()).isEmpty();
        assertThat(none.unclear()).isEmpty();
        assertThat(none.further()).hasSize(1);
        Fulfilled both = Fulfilled.of(
                program, List.of(line(JUNE.plusDays(1), 20), line(JUNE, 20).meaning(new MeantPass("One", 2))));
        assertThat(both.done()).containsOnlyKeys(1, 2);
        assertThat(Objects.requireNonNull(both.done().get(2)).date()).isEqualTo(JUNE);
    }

    /** Another program that plans the same product for the day of the pass that was meant has it fulfilled too. */
    @Test
    void itHoldsForTheSamePassOfOtherPrograms() {
        Program program = program(JUNE, JUNE.plusDays(10));
        Done line = line(JUNE.plusDays(5), 20).meaning(new MeantPass("Other", 7));
        Pass meant = program.passes().get(1).numbered(7);
        assertThat(Fulfilled.of(program, List.of(line)).unclear()).hasSize(1);
        assertThat(Fulfilled.of(program, List.of(line), one -> Optional.of(meant))
                        .done())
                .containsOnlyKeys(2);
    }

    @Test
    void eachLineOnceAndEachPassOnce() {
        List<Done> lines = List.of(line(JUNE.plusDays(1), 20), line(JUNE.plusDays(1), 20), line(JUNE.plusDays(2), 20));
        Fulfilled fulfilled = Fulfilled.of(program(JUNE, JUNE.plusDays(1)), lines);
        assertThat(fulfilled.done()).hasSize(2);
        assertThat(fulfilled.further()).hasSize(1);
    }

    @Test
    void lastAutumnIsNoPassOfThisJune() {
        Fulfilled fulfilled = Fulfilled.of(program(JUNE), List.of(line(LocalDate.of(2025, 11, 5), 20)));
        assertThat(fulfilled.done()).isEmpty();
        assertThat(fulfilled.unclear()).isEmpty();
        assertThat(fulfilled.further()).hasSize(1);
    }
}
