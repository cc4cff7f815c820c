package plumbrow.science.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import plumbrow.science.figure.Status;
import plumbrow.science.figure.Subject;
import plumbrow.science.reference.Sources;

@DisplayName("Values from outside come out as their sources print them")
class ChecksTest {

    @TestFactory
    Stream<DynamicTest> comesOut() {
        return Checks.listed().stream()
                .map(check -> DynamicTest.dynamicTest(
                        check.what() + " → " + check.expected(),
                        () -> assertThat(check.holds())
                                .as(
                                        "%s%n by %s%n printed %s%n found %s",
                                        check.what(), check.source(), check.expected(), check.found())
                                .isTrue()));
    }

    @Test
    @DisplayName("Each names its source, and what was seen cites one of the list")
    void namesItsSource() {
        assertThat(Checks.all())
                .allMatch(check -> !check.source().isBlank())
                .filteredOn(check -> check.status() == Status.VERIFIED)
                .filteredOn(check -> Sources.in(check.source()).isEmpty())
                .extracting(check -> check.what() + ": " + check.source())
                .isEmpty();
    }

    @Test
    @DisplayName("A wrong value does not hold, and a value said to differ must")
    void canFail() {
        assertThat(one("1.50", 1.50, "").holds()).isTrue();
        assertThat(one("1.50", 1.52, "").holds()).isFalse();
        assertThat(one("1.50", 1.52, "a misprint").holds()).isTrue();
        assertThat(one("1.50", 1.50, "a misprint").holds()).isFalse();
    }

    private static Check one(String printed, double got, String differs) {
        return new Check(
                Subject.SOIL, "x", "y", Status.COMPUTED, Map.of("", printed), () -> Map.of("", got), 0, differs);
    }
}
