package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.FigureInputException;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Range;

@DisplayName("Numbers at the ends of what a computer can hold give finite answers or one sentence, never a fault")
class ExtremeInputTest {
    private static final double[] EXTREME = {
        -Double.MAX_VALUE,
        -1e308,
        -1e15,
        -1e-15,
        -Double.MIN_VALUE,
        0,
        Double.MIN_VALUE,
        1e-308,
        1e-15,
        1e-9,
        1,
        1e15,
        1e308,
        Double.MAX_VALUE
    };

    /** Ways to put extremes into all boxes at once; each box goes through its own in another order. */
    private static final int TOGETHER = 24;

    static Stream<Figure> figures() {
        return Figures.all().stream();
    }

    @ParameterizedTest
    @MethodSource("figures")
    void oneBoxAtATimeAndAllAtOnce(Figure figure) {
        Map<String, String> example = figure.examples().get(0).inputs();
        List<Input> numeric =
                figure.inputs().stream().filter(ExtremeInputTest::isNumeric).toList();
        for (Input input : numeric) {
            for (String extreme : extremes(input)) {
                Map<String, String> typed = new HashMap<>(example);
                typed.put(input.key(), extreme);
                answered(figure, typed);
            }
        }
        for (int round = 0; round < TOGETHER; round++) {
            Map<String, String> typed = new HashMap<>(example);
            for (int i = 0; i < numeric.size(); i++) {
                List<String> choices = extremes(numeric.get(i));
                typed.put(numeric.get(i).key(), choices.get((round * 7 + i * round) % choices.size()));
            }
            answered(figure, typed);
        }
    }

    private static void answered(Figure figure, Map<String, String> typed) {
        try {
            figure.answer(typed).outputs().values().forEach(ExtremeInputTest::finite);
        } catch (FigureInputException refused) {
            assertThat(refused.getMessage()).isNotBlank().doesNotContain("\n");
        } catch (RuntimeException | StackOverflowError fault) {
            throw new AssertionError(figure.id() + " fails with " + typed, fault);
        }
    }

    private static void finite(Object value) {
        if (value instanceof Double number) {
            assertThat(number).isFinite();
        } else if (value instanceof List<?> list) {
            list.forEach(ExtremeInputTest::finite);
        }
    }

    /** What its range lets in of the extremes and of the numbers beside its ends. */
    private static List<String> extremes(Input input) {
        Range range = input.range();
        TreeSet<Double> values = new TreeSet<>();
        for (double extreme : EXTREME) {
            values.add(extreme);
        }
        for (double end : new double[] {range.low(), range.high()}) {
            values.addAll(List.of(end, Math.nextUp(end), Math.nextDown(end)));
        }
        List<String> typed = new ArrayList<>();
        for (double value : values) {
            if (range.holds(value)) {
                String text = Double.toString(value);
                switch (input.kind()) {
                    case LIST -> typed.addAll(List.of(text, text + "," + text + ",1"));
                    case TABLE -> typed.addAll(List.of(text, text + ",1;1," + text));
                    default -> typed.add(text);
                }
            }
        }
        return typed;
    }

    private static boolean isNumeric(Input input) {
        return switch (input.kind()) {
            case NUMBER, LIST, TABLE -> true;
            case WORD, TEXT -> false;
        };
    }
}
