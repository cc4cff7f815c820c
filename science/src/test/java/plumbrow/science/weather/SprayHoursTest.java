package plumbrow.science.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Hours fit for spraying, against values from outside")
class SprayHoursTest {

    @Test
    @DisplayName("4.7 nine hours of 15 May 2024 at 42.0347 N, 93.62 W, each with its reasons")
    void printedTable() {
        assertThat(results(day()))
                .hasToString("["
                        + String.join(
                                ", ",
                                "fail wind too low, delta T too low, time of inversions",
                                "pass",
                                "pass",
                                "pass",
                                "pass, marginal delta T",
                                "fail wind too high, delta T too high",
                                "pass, marginal delta T",
                                "fail time of inversions",
                                "fail wind too low, time of inversions")
                        + "]");
    }

    @Test
    @DisplayName("Hours that follow each other make a run; a gap in the list breaks it")
    void runs() {
        Map<String, String> typed = new HashMap<>(Map.of(
                "hour", "9,10,11,13,14",
                "temperature_c", "20,20,20,20,20",
                "humidity_pct", "50,50,50,50,50",
                "wind_mph", "6,6,6,6,6",
                "sunrise_h", "5",
                "sunset_h", "20"));
        assertThat(SprayHours.FIGURE.answer(typed).number("longest_run")).isEqualTo(3);
        typed.put("rain_in", "0,0.1,0,0,0");
        assertThat(SprayHours.FIGURE.answer(typed).number("longest_run")).isEqualTo(2);
        assertThat(SprayHours.FIGURE.answer(typed).number("passing")).isEqualTo(4);
    }

    @Test
    @DisplayName("An hour that lacks a number is refused, never passed")
    void missing() {
        Map<String, String> typed = day();
        typed.put("wind_mph", "2,4.5,6");
        assertThatThrownBy(() -> SprayHours.FIGURE.answer(typed))
                .isInstanceOf(FigureInputException.class)
                .hasMessageStartingWith("wind_mph");
    }

    private static Map<String, String> day() {
        return new HashMap<>(SprayHours.FIGURE.examples().get(0).inputs());
    }

    private static List<?> results(Map<String, String> typed) {
        return (List<?>)
                Objects.requireNonNull(SprayHours.FIGURE.answer(typed).outputs().get("results"));
    }
}
