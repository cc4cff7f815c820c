package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.science.figure.Example;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Step;

@DisplayName("A line of working, redone from its own text, gives the result it shows")
class WorkingTest {
    /** Numbers in a working carry six digits, so a redone line may differ a little in the fifth. */
    private static final double DIGITS = 2e-4;

    /** Lines that hold words ("rounded up", "root of") can't be redone by a calculator; most must not be such. */
    private static final double LEAST_SHARE_REDONE = 0.8;

    static Stream<Figure> figures() {
        return Figures.all().stream();
    }

    @ParameterizedTest
    @MethodSource("figures")
    void linesComeOut(Figure figure) {
        for (Example example : figure.examples()) {
            for (Step step : figure.answer(example.inputs()).working()) {
                List<Double> redone = redone(step);
                if (!redone.isEmpty()) {
                    double slack = DIGITS * Math.max(Math.abs(step.value()), 1e-3);
                    assertThat(redone)
                            .as("%s: %s", figure.id(), step.text())
                            .anyMatch(value -> Math.abs(value - step.value()) <= slack
                                    || (step.unit().equals("%") && Math.abs(100 * value - step.value()) <= slack));
                }
            }
        }
    }

    @Test
    void mostLinesCanBeRedone() {
        List<String> words = new ArrayList<>();
        int all = 0;
        for (Figure figure : Figures.all()) {
            for (Step step : figure.answer(figure.examples().get(0).inputs()).working()) {
                all++;
                if (redone(step).isEmpty()) {
                    words.add(figure.id() + ": " + step.text());
                }
            }
        }
        assertThat(words.size()).as(String.join("\n", words)).isLessThan((int) ((1 - LEAST_SHARE_REDONE) * all));
    }

    private static List<Double> redone(Step step) {
        return Stream.of(true, false)
                .map(hundredth -> Arithmetic.redo(step.arithmetic(), hundredth))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList();
    }
}
