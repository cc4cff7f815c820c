package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The gates as a whole. */
class GatesTest {

    @Test
    void everyGateHasItsOwnNameAndAsksAQuestion() {
        assertThat(Gates.all()).extracting(Gate::id).doesNotHaveDuplicates();
        assertThat(Gates.all()).extracting(Gate::question).allMatch(question -> question.endsWith("?"));
    }

    @Test
    void programOfNothingIsNotCalledClear() {
        assertThat(Gates.standing(List.of())).isEqualTo(Standing.NOTHING_ASKED);
    }
}
