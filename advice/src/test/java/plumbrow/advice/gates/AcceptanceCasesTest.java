package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

@DisplayName("The manual's table of cases that were called clear, or could not be met or said, holds line by line")
class AcceptanceCasesTest {
    private static final Path CASES = Path.of("..", "docs", "gates", "cases.md");

    @TestFactory
    Stream<DynamicTest> everyCaseIsAnsweredAsExpected() throws IOException {
        return lines().stream()
                .map(cells -> DynamicTest.dynamicTest(cells.get(0), () -> {
                    assertThat(cells.get(5)).as("now").isEqualTo(cells.get(3));
                    Decides.line(cells.get(2), cells.get(1).replace("`", ""), cells.get(3));
                }));
    }

    @Test
    void thereAreCases() throws IOException {
        assertThat(lines()).hasSizeGreaterThan(80);
    }

    private static List<List<String>> lines() throws IOException {
        return Files.readAllLines(CASES).stream()
                .filter(line -> line.startsWith("| ") && line.contains("`"))
                .map(line -> Arrays.stream(line.substring(1).split("\\|"))
                        .map(String::strip)
                        .toList())
                .toList();
    }
}
