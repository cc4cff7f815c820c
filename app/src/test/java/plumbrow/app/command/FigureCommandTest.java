package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static plumbrow.app.command.Typed.plumbrow;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.science.Figures;
import plumbrow.science.figure.Example;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Output;
import plumbrow.science.figure.Subject;
import tools.jackson.databind.JsonNode;

class FigureCommandTest {
    static Stream<Figure> figures() {
        return Figures.all().stream();
    }

    @Test
    void theListHasEveryFigureUnderItsSubject() {
        String list = plumbrow("figure").good().out();
        assertThat(list).contains(figures().map(Figure::id).toList());
        assertThat(list).contains(figures().map(Figure::question).toList());
        List<String> titles =
                figures().map(Figure::subject).distinct().map(Subject::title).toList();
        assertThat(list.lines().map(String::strip).toList()).containsAll(titles);
        assertThat(plumbrow("figure", "--json").good().json().size())
                .isEqualTo((int) figures().count());
    }

    @ParameterizedTest
    @MethodSource("figures")
    void everyPageSaysWhatIsNeeded(Figure figure) {
        String page = plumbrow("figure", figure.id()).good().out();
        figure.inputs().forEach(input -> assertThat(page).contains(input.key(), input.label(), input.example()));
        figure.outputs().forEach(output -> assertThat(page).contains(output.key()));
        assertThat(page).contains("Formula", "Source", "plumbrow figure " + figure.id() + " ");
        assertThat(plumbrow("figure", figure.id(), "--json")
                        .good()
                        .json()
                        .get("id")
                        .stringValue())
                .isEqualTo(figure.id());
    }

    @ParameterizedTest
    @MethodSource("figures")
    void everyExampleCanBeTyped(Figure figure) {
        for (Example example : figure.examples()) {
            JsonNode json = plumbrow(typed(figure, example, "--json")).good().json();
            assertThat(json.propertyNames()).containsExactly("figure", "outputs", "working", "source", "cautions");
            assertThat(json.get("outputs").propertyNames())
                    .containsAll(example.expected().keySet())
                    .isSubsetOf(figure.outputs().stream().map(Output::key).toList());
        }
        Example first = figure.examples().get(0);
        String text = plumbrow(typed(figure, first)).good().out();
        String inOneLine = text.replaceAll("\\s+", " ");
        assertThat(inOneLine)
                .contains(
                        "Source",
                        figure.outputs().get(0).label(),
                        "Formula",
                        "(" + figure.status().words() + ")");
        figure.answer(first.inputs())
                .working()
                .forEach(step -> assertThat(inOneLine).contains(step.text().replaceAll("\\s+", " ")));
    }

    private static Object[] typed(Figure figure, Example example, String... more) {
        List<Object> words = new ArrayList<>(List.of("figure", figure.id()));
        example.inputs().forEach((key, value) -> words.add(key + "=" + value));
        words.addAll(List.of(more));
        return words.toArray();
    }

    @Test
    void aQuestionFindsItsFigures() {
        String found = plumbrow("figure", "--search", "How many jugs until I must report a spill?")
                .good()
                .out();
        assertThat(found.strip()).startsWith("spill ");
        assertThat(plumbrow("figure", "--search", "how much residual is left", "--json")
                        .good()
                        .out())
                .contains("residual-left");
        assertThat(plumbrow("figure", "--search", "zzz").good().out()).contains("No figure asks “zzz”");
        plumbrow("figure", "--search", "how", "much").refused("'much' stands outside");
    }

    /** 22 ÷ 4.40 = 5: by hand. */
    @Test
    void anAnswerShowsUnitsWorkingAndSource() {
        Typed typed = plumbrow("figure", "break-even-gain", "extra_cost_usd_ac=22", "price_usd_bu=4.40")
                .good();
        assertThat(typed.out()).containsPattern(" 5 +bu/ac").contains("Working", "Source");
        assertThat(plumbrow("figure", "break-even-gain", "extra_cost_usd_ac=22", "price_usd_bu=4.40", "--json")
                        .json()
                        .get("outputs")
                        .get("gain_bu_ac")
                        .doubleValue())
                .isEqualTo(5, offset(1e-12));
    }

    @Test
    void badInputNamesKeyValueAndRange() {
        plumbrow("figure", "break-even-gain", "extra_cost_usd_ac=22", "price_usd_bu=-1")
                .refused("price_usd_bu is '-1'; expected a number, more than 0");
        plumbrow("figure", "break-even-gain", "extra_cost_usd_ac=22", "price_usd_bu=four")
                .refused("price_usd_bu is 'four'");
        plumbrow("figure", "break-even-gain", "extra_cost_usd_ac=22", "--json").refused("price_usd_bu is missing");
        plumbrow("figure", "break-even-gain", "price=4").refused("has no input 'price'; it takes extra_cost_usd_ac");
        plumbrow("figure", "break-even-gain", "4.40").refused("'4.40' is not an input; expected key=value");
        plumbrow("figure", "break-even-gain", "price_usd_bu=4", "price_usd_bu=5")
                .refused("price_usd_bu is given twice");
    }

    @Test
    void anUnknownFigureIsSaidSo() {
        plumbrow("figure", "even-gain").refused("There is no figure 'even-gain'; did you mean break-even-gain");
        plumbrow("figure", "zzz").refused("plumbrow figure lists them all");
    }
}
