package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.science.checks.Check;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Example;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Output;
import plumbrow.science.figure.Range;

@DisplayName("Every figure is a complete page, and its examples come out as their sources print them")
class FiguresTest {
    private static final Set<Input.Kind> NUMERIC = Set.of(Input.Kind.NUMBER, Input.Kind.LIST, Input.Kind.TABLE);

    /** Money, yields and their differences may be of any size and sign; everything else has a range. */
    private static final Set<String> OF_EITHER_SIGN = Set.of("", "$/ac", "bu/ac", "bu per unit");

    private static final int FEWEST_FIGURES = 110;

    static Stream<Figure> figures() {
        return Figures.all().stream();
    }

    static Stream<Arguments> examples() {
        return figures().flatMap(figure -> figure.examples().stream().map(example -> Arguments.of(figure, example)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("examples")
    void exampleComesOut(Figure figure, Example example) {
        Check check = Check.of(figure, example);
        assertThat(check.holds())
                .as("%s, printed %s, found %s", check.what(), check.expected(), check.found())
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("figures")
    void pageIsComplete(Figure figure) {
        assertThat(figure.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
        assertThat(figure.question()).endsWith("?");
        assertThat(figure.formula()).isNotBlank();
        assertThat(figure.cited()).isNotBlank();
        assertThat(figure.validity()).endsWith(".");
        assertThat(figure.cautions()).allMatch(caution -> caution.endsWith("."));
        assertThat(figure.inputs()).isNotEmpty();
        assertThat(figure.outputs()).isNotEmpty();
        assertThat(figure.examples()).isNotEmpty().allSatisfy(example -> {
            assertThat(example.cited()).isNotBlank();
            assertThat(example.expected()).isNotEmpty();
        });
        for (Input input : figure.inputs()) {
            assertThat(input.key()).matches("[a-z][a-z0-9_]*");
            assertThat(input.label()).isNotBlank();
            assertThat(input.example()).isNotBlank();
            assertThat(input.kind() == Input.Kind.WORD)
                    .isEqualTo(!input.choices().isEmpty());
            assertThat(input.range().low()).isLessThan(input.range().high());
            if (input.range().equals(Range.ANY) && NUMERIC.contains(input.kind())) {
                assertThat(input.unit())
                        .as("%s %s has no range", figure.id(), input.key())
                        .isIn(OF_EITHER_SIGN);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("figures")
    void answersWhatItDeclares(Figure figure) {
        Set<String> declared = figure.outputs().stream().map(Output::key).collect(Collectors.toSet());
        Set<String> always = figure.outputs().stream()
                .filter(Output::always)
                .map(Output::key)
                .collect(Collectors.toSet());
        Set<String> seen = new TreeSet<>();
        for (Example example : figure.examples()) {
            Answer answer = figure.answer(example.inputs());
            assertThat(declared).containsAll(answer.outputs().keySet());
            assertThat(answer.outputs().keySet()).containsAll(always);
            assertThat(answer.working()).isNotEmpty();
            assertThat(answer.cautions()).containsAll(figure.cautions());
            seen.addAll(answer.outputs().keySet());
        }
        assertThat(seen).as("outputs that an example shows").isEqualTo(new TreeSet<>(declared));
    }

    @ParameterizedTest
    @MethodSource("figures")
    void answersItsOwnInputExamples(Figure figure) {
        // What is required, and what the kind shown in the first worked example needs besides.
        Set<String> shown = figure.examples().get(0).inputs().keySet();
        Map<String, String> typed = figure.inputs().stream()
                .filter(input -> input.required() || shown.contains(input.key()))
                .collect(Collectors.toMap(Input::key, Input::example));
        assertThat(figure.answer(typed).outputs()).isNotEmpty();
    }

    @Test
    void noNameTwiceAndNoneForgotten() {
        assertThat(Figures.all()).hasSizeGreaterThanOrEqualTo(FEWEST_FIGURES);
        assertThat(figures().map(Figure::id)).doesNotHaveDuplicates();
        assertThat(Figures.find("seed-cost")).isPresent();
        assertThat(Figures.find("no-such-figure")).isEmpty();
    }
}
