package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
    void everyGateHasItsSectionInTheDocs() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("..", "docs", "gates.md"));
        assertThat(lines)
                .containsAll(
                        Gates.all().stream().map(gate -> "### " + gate.id()).toList());
        assertThat(String.join(" ", lines))
                .contains(Gates.all().stream()
                        .map(gate -> "*" + gate.question() + "*")
                        .toList());
    }

    @Test
    void courseOfNothingIsClear() {
        assertThat(Gates.standing(List.of())).isEqualTo(Standing.CLEAR);
    }
}
