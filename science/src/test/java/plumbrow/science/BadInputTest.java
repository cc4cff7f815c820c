package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.FigureInputException;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Range;

@DisplayName("Bad input gets one sentence that names the key, whatever the figure")
class BadInputTest {

    static Stream<Figure> figures() {
        return Figures.all().stream();
    }

    @ParameterizedTest
    @MethodSource("figures")
    void missing(Figure figure) {
        for (Input input : figure.inputs()) {
            if (input.required()) {
                Map<String, String> typed = good(figure);
                typed.remove(input.key());
                refused(figure, typed, input.key());
                typed.put(input.key(), "  ");
                refused(figure, typed, input.key());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("figures")
    void unknownKey(Figure figure) {
        Map<String, String> typed = good(figure);
        typed.put("colour", "1");
        refused(figure, typed, "colour");
    }

    @ParameterizedTest
    @MethodSource("figures")
    void notANumber(Figure figure) {
        for (Input input : figure.inputs()) {
            if (isNumeric(input)) {
                for (String bad :
                        List.of("many", "NaN", "Infinity", "-Infinity", "1e400", "12 bu", "0x10", "1,", "$5", "1\n2")) {
                    Map<String, String> typed = good(figure);
                    typed.put(input.key(), bad);
                    refused(figure, typed, input.key());
                }
            } else if (input.kind() == Input.Kind.WORD) {
                Map<String, String> typed = good(figure);
                typed.put(input.key(), "perhaps");
                refused(figure, typed, input.key());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("figures")
    void outOfRange(Figure figure) {
        for (Input input : figure.inputs()) {
            if (isNumeric(input)) {
                for (double bad : outside(input.range())) {
                    Map<String, String> typed = good(figure);
                    typed.put(input.key(), Double.toString(bad));
                    refused(figure, typed, input.key());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("figures")
    @DisplayName("Numbers inside their ranges give finite answers or one sentence, never a fault")
    void insideTheRanges(Figure figure) {
        SplittableRandom random = new SplittableRandom(figure.id().hashCode());
        for (int round = 0; round < 300; round++) {
            Map<String, String> typed = good(figure);
            for (Input input : figure.inputs()) {
                if (isNumeric(input) && random.nextInt(3) > 0) {
                    typed.put(input.key(), wild(input, random));
                }
            }
            Answer answer;
            try {
                answer = figure.answer(typed);
            } catch (FigureInputException e) {
                assertThat(e.getMessage()).isNotBlank().doesNotContain("\n");
                continue;
            }
            answer.outputs().values().forEach(BadInputTest::finite);
        }
    }

    private static void finite(Object value) {
        if (value instanceof Double number) {
            assertThat(number).isFinite();
        } else if (value instanceof List<?> list) {
            list.forEach(BadInputTest::finite);
        } else {
            assertThat(value).isInstanceOf(String.class);
        }
    }

    private static void refused(Figure figure, Map<String, String> typed, String key) {
        Throwable thrown = catchThrowable(() -> figure.answer(typed));
        assertThat(thrown)
                .as("%s with %s", figure.id(), typed)
                .asInstanceOf(InstanceOfAssertFactories.type(FigureInputException.class))
                .satisfies(e -> {
                    assertThat(e.getMessage())
                            .contains(key)
                            .doesNotContain("\n")
                            .hasSizeLessThan(600);
                    assertThat(e.key()).isEqualTo(key);
                });
    }

    private static Map<String, String> good(Figure figure) {
        return new HashMap<>(figure.examples().get(0).inputs());
    }

    private static boolean isNumeric(Input input) {
        return switch (input.kind()) {
            case NUMBER, LIST, TABLE -> true;
            case WORD, TEXT -> false;
        };
    }

    private static List<Double> outside(Range range) {
        List<Double> bad = new ArrayList<>();
        if (Double.isFinite(range.low())) {
            bad.add(range.low() - 1);
            bad.add(-1e300);
            if (range.lowOpen()) {
                bad.add(range.low());
            }
        }
        if (Double.isFinite(range.high())) {
            bad.add(range.high() + 1);
            bad.add(1e300);
            if (range.highOpen()) {
                bad.add(range.high());
            }
        }
        return bad;
    }

    /** The example, a number scaled far up or down within the range, or an end of the range. */
    private static String wild(Input input, SplittableRandom random) {
        return switch (input.kind()) {
            case LIST -> wild(input.range(), random) + "," + wild(input.range(), random);
            case TABLE ->
                wild(input.range(), random) + "," + wild(input.range(), random) + ";" + wild(input.range(), random);
            default -> wild(input.range(), random);
        };
    }

    private static String wild(Range range, SplittableRandom random) {
        double low = Double.isFinite(range.low()) ? range.low() : -1e6;
        double high = Double.isFinite(range.high()) ? range.high() : 1e6;
        double value = switch (random.nextInt(5)) {
            case 0 -> low;
            case 1 -> high;
            case 2 -> Double.isFinite(range.high()) ? high : Math.pow(10, random.nextDouble(-300, 300));
            default -> random.nextDouble(low, high);
        };
        return Double.toString(value);
    }
}
