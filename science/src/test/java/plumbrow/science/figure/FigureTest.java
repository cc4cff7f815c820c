package plumbrow.science.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The declaration of a figure, its reading of inputs and its working")
class FigureTest {
    private static final Figure SUM = Figure.declare("sum", Subject.ECONOMICS)
            .question("What do all cells sum to?")
            .input(Input.table("cells", "Cells", "", Range.PERCENT, "1,2;3"))
            .input(Input.number("times", "Times", "", Range.POSITIVE, "2").orElse("1"))
            .input(Input.text("name", "Name", "north forty").optional())
            .output("total", "Total", "")
            .formula("Σ")
            .source("Arithmetic", Status.PRACTICE)
            .validity("Cells from 0 to 100.")
            .example("cells=1,2;3 times=2 name=north forty", "total=12", "by hand", Status.COMPUTED)
            .model((given, working) -> {
                double sum = 0;
                for (double[] row : given.table("cells")) {
                    for (double cell : row) {
                        sum += cell;
                    }
                }
                double times = given.number("times");
                return new Outputs().put("total", working.line("total", sum * times, "t", "{} × {}", sum, times));
            });

    @Test
    void tableDefaultAndWorking() {
        Answer answer = SUM.answer(Map.of("cells", " 1, 2 ;3"));
        assertThat(answer.number("total")).isEqualTo(6);
        assertThat(answer.working()).extracting(Step::text).containsExactly("total = 6 × 1 = 6 t");
    }

    @Test
    @DisplayName("An example is typed on one line; a text in it may hold blanks")
    void exampleLine() {
        Example example = SUM.examples().get(0);
        assertThat(example.inputs()).containsEntry("name", "north forty").containsEntry("cells", "1,2;3");
        assertThat(SUM.answer(example.inputs()).number("total")).isEqualTo(12);
        assertThat(Example.lastDigit("5.43")).isCloseTo(.01, within(1e-15));
        assertThat(Example.lastDigit("-152941")).isEqualTo(1);
    }

    @Test
    @DisplayName("A refusal names the key, what was found and what is expected")
    void refusal() {
        assertThatThrownBy(() -> SUM.answer(Map.of("cells", "1,200")))
                .isInstanceOf(FigureInputException.class)
                .hasMessage(
                        "cells is '1,200'; expected rows of numbers, commas between numbers and semicolons between rows,"
                                + " 0 to 100, such as 1,2;3");
        assertThatThrownBy(() -> SUM.answer(Map.of("cells", "1", "times", "0"))).hasMessageContaining("times is '0'");
    }

    @Test
    @DisplayName("A result that is no number is a sentence, not a fault of Plumbrow")
    void noInfinity() {
        assertThatThrownBy(() -> SUM.answer(Map.of("cells", "100", "times", "1e308")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("no finite answer");
        assertThatThrownBy(() -> new Outputs().put("x", Double.NaN)).isInstanceOf(FigureInputException.class);
    }

    @Test
    @DisplayName("Blanks and numbers of a line must agree; a negative number stands in brackets")
    void line() {
        Working working = new Working();
        working.line("rest", 5, "bu", "{} − {}", 3, -2);
        assertThat(working.steps().get(0).text()).isEqualTo("rest = 3 − (−2) = 5 bu");
        assertThatThrownBy(() -> working.line("x", 1, "", "{}")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> working.line("x", 1, "", "", 2)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    @DisplayName("A page with a part missing can't be declared")
    void incomplete() {
        assertThatThrownBy(() -> Figure.declare("x", Subject.SOIL).model((given, working) -> new Outputs()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("no question");
    }

    @Test
    @DisplayName("Numbers as the desk writes them")
    void numbers() {
        assertThat(Numbers.plain(152941.17647)).isEqualTo("152,941");
        assertThat(Numbers.plain(-0.000012345678)).isEqualTo("−0.0000123457");
        assertThat(Numbers.plain(0.1 + 0.2)).isEqualTo("0.3");
        assertThat(Numbers.fixed(-0.004, 2)).isEqualTo("0.00");
        assertThat(Numbers.dollars(-3.2, 2)).isEqualTo("−$3.20");
        assertThat(Numbers.wholeUp(68.00000000000001)).isEqualTo(68);
        assertThat(Numbers.wholeUp(12.8)).isEqualTo(13);
    }
}
