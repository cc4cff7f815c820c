package plumbrow.science.insects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.numbers;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Thresholds as the states print them, against values from outside")
class StateRulesTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "iowa, 30 20 20 20",
        "nebraska, 30 20 20 15",
        "ohio, 30 30 10 15",
        "pennsylvania, 25 15 15 25",
        "south-carolina, 30 15 15 15"
    })
    @DisplayName("4.5 defoliation by state and stage (verified): at the threshold treat, below it not")
    void defoliation(String state, String row) {
        String[] stages = {"vegetative", "bloom", "pods", "full-seed"};
        double[] printed = numbers(row);
        for (int i = 0; i < stages.length; i++) {
            Map<String, String> at =
                    Map.of("defoliation_pct", Double.toString(printed[i]), "state", state, "stage", stages[i]);
            Map<String, String> below =
                    Map.of("defoliation_pct", Double.toString(printed[i] - .1), "state", state, "stage", stages[i]);
            assertThat(SoybeanDefoliation.FIGURE.answer(at).word("verdict")).startsWith("treat");
            assertThat(SoybeanDefoliation.FIGURE.answer(below).word("verdict")).isEqualTo("below the threshold");
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "greenbug, 5 25 25 25 25",
        "corn-leaf, 20 30 25 25 25",
        "bird-cherry-oat, 20 30 5 10 10",
        "english-grain, 30 50 5 10 10"
    })
    @DisplayName("4.7 aphids a stem, Nebraska (verified); greenbug on seedlings the careful end of 5 to 15")
    void wheatAphids(String kind, String row) {
        String[] stages = {"seedling", "boot-to-head", "flower", "milk", "milk-to-dough"};
        double[] printed = numbers(row);
        for (int i = 0; i < stages.length; i++) {
            Answer more = WheatAphidThreshold.FIGURE.answer(
                    Map.of("aphids_stem", Double.toString(printed[i] + .1), "kind", kind, "stage", stages[i]));
            assertThat(more.number("threshold")).isEqualTo(printed[i]);
            assertThat(more.word("verdict")).isEqualTo("treat");
        }
    }

    @ParameterizedTest(name = "{0}: {1} a sweep")
    @CsvSource({
        "ohio-grain, .40",
        "ohio-seed, .20",
        "tennessee-r1-r6, .36",
        "tennessee-r6-r7, .72",
        "georgia-bloom-to-mid-fill, .12",
        "georgia-later, .24",
        "mississippi-r6, .80"
    })
    @DisplayName("4.6 stink bugs a sweep (computed from the printed sweeps)")
    void stinkBugs(String rule, double perSweep) {
        Answer answer = StinkBug.SOYBEAN.answer(Map.of("bugs", "1", "sweeps", "10", "rule", rule));
        assertThat(answer.number("threshold")).isCloseTo(perSweep, within(1e-12));
    }

    @Test
    @DisplayName("4.6 no row for V7 to V13: no published threshold, whatever the count")
    void noRow() {
        Answer answer = StinkBug.CORN.answer(Map.of("bugs", "900", "plants", "100", "stage", "v7-v13"));
        assertThat(answer.word("verdict")).isEqualTo("no published threshold");
    }

    @Test
    @DisplayName("4.7 Ohio's fly-free dates run over 13 days, the rule of latitude over 10 to 14 (order only)")
    void flyFree() {
        double days = HessianFly.FIGURE
                .answer(Map.of("known_latitude", "38.5", "latitude", "41.7"))
                .number("days_sooner");
        assertThat(days).isCloseTo(12.5, within(1.0));
    }

    @Test
    @DisplayName("2.1 the old scale has no equal in nodes below 4")
    void oldRating() {
        for (String rating : new String[] {"1", "2.5", "3", "4.5"}) {
            assertThatThrownBy(() -> RootwormScores.RATING.answer(Map.of("rating", rating)))
                    .isInstanceOf(FigureInputException.class)
                    .hasMessageStartingWith("rating");
        }
    }

    @Test
    @DisplayName("8.3 soybean: two stretches added are the stretch of both; none across flowering from V5")
    void soybeanSteps() {
        assertThat(days("r1", "r3") + days("r3", "r8")).isEqualTo(days("r1", "r8"));
        assertThatThrownBy(() -> SoybeanCalendar.FIGURE.answer(Map.of("from", "v3", "to", "r1")))
                .isInstanceOf(FigureInputException.class);
        assertThatThrownBy(() -> SoybeanCalendar.FIGURE.answer(Map.of("from", "r5", "to", "r5")))
                .isInstanceOf(FigureInputException.class);
    }

    @Test
    @DisplayName("7.2 the guess for recessive genes lies up to a tenth below the counted generations")
    void guessBesideCount() {
        for (String refuge : new String[] {".05", ".1", ".2", ".5"}) {
            Map<String, String> typed = Map.of("refuge_share", refuge, "initial_frequency", ".001");
            double guess = RefugeWorth.GUESS.answer(typed).number("generations");
            double counted = InsectResistance.FIGURE
                    .answer(Map.of("refuge_share", refuge, "initial_frequency", ".001", "dominance_h", "0"))
                    .number("generations_to_half");
            assertThat(guess).isLessThan(counted).isGreaterThan(.89 * counted);
        }
    }

    @Test
    @DisplayName("9 the order of two groups does not matter, and a fungicide group of many sites is read")
    void sequence() {
        assertThat(warning("4C", "4A")).isEqualTo(warning("4A", "4C")).isEqualTo("soft");
        assertThat(warning("M03", "m3")).isEqualTo("hard");
        assertThat(warning("3A, 28", "28,4A")).isEqualTo("hard");
        assertThatThrownBy(() -> warning("pyrethroid", "3A")).isInstanceOf(FigureInputException.class);
    }

    private static String warning(String first, String second) {
        return InsecticideSequence.FIGURE
                .answer(Map.of("first", first, "second", second))
                .word("warning");
    }

    private static double days(String from, String to) {
        return SoybeanCalendar.FIGURE.answer(Map.of("from", from, "to", to)).number("days");
    }
}
