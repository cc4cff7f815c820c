package plumbrow.science.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Strip trials, against values from outside")
class TrialsTest {

    @ParameterizedTest(name = "df {0}: {1}")
    @CsvSource({"3, 3.1824", "5, 2.5706", "9, 2.2622", "15, 2.1314", "29, 2.0452"})
    @DisplayName("3.3 critical t at 97.5 % (computed)")
    void criticalT(double df, String t) {
        assertPrinted(StudentT.quantile(.975, df), t);
    }

    @Test
    @DisplayName("3.3 critical F at 95 % (computed)")
    void criticalF() {
        assertPrinted(FisherF.quantile(.95, 5, 15), "2.9013");
        assertPrinted(FisherF.quantile(.95, 3, 15), "3.2874");
    }

    @Test
    @DisplayName("3.3 q(.05; 6, 15) 4.5947 and Dunnett's d, two-sided (computed)")
    void manyMeans() {
        assertPrinted(ManyMeans.honestRange(.95, 6, 15), "4.5947");
        assertPrinted(ManyMeans.againstControl(.95, 2, 6), "2.863");
        // The reference prints 2.814 and 2.684 with a numeric slack of .003; integration gives 2.8116 and 2.6829.
        assertThat(ManyMeans.againstControl(.95, 3, 9)).isCloseTo(2.814, within(.003));
        assertThat(ManyMeans.againstControl(.95, 3, 12)).isCloseTo(2.684, within(.003));
        assertThat(ManyMeans.againstControl(.95, 5, 15)).isCloseTo(2.815, within(.003));
    }

    @Test
    @DisplayName("Two means: q is √2·t, and one treatment against a control is t")
    void twoMeansAreStudent() {
        assertThat(ManyMeans.honestRange(.95, 2, 7)).isCloseTo(Math.sqrt(2) * StudentT.quantile(.975, 7), within(1e-6));
        assertThat(ManyMeans.againstControl(.95, 1, 7)).isCloseTo(StudentT.quantile(.975, 7), within(1e-6));
    }

    @Test
    @DisplayName(
            "3.3 chances against the 25 kg control of the rice trial, .9995 .9011 .6607 .3087 .2996 (± .001, numeric)")
    void dunnettChances() {
        double[] means = {5070.25, 5304.25, 4847.75, 4708.00, 4703.25};
        double[] chances = {.9995, .9011, .6607, .3087, .2996};
        for (int i = 0; i < means.length; i++) {
            double t = Math.abs(means[i] - 5124.00) / 235.115;
            assertThat(1 - ManyMeans.controlAtMost(t, 5, 15)).isCloseTo(chances[i], within(.001));
        }
    }

    @Test
    @DisplayName("3.2 barley pairs: standard error 4.78742, chance above 8 .94544 (computed)")
    void barley() {
        Answer answer =
                PairedStrips.FIGURE.answer(PairedStrips.FIGURE.examples().get(2).inputs());
        assertPrinted(answer.number("standard_error"), "4.78742");
        assertPrinted(answer.number("chance_above_break_even"), ".94544");
    }

    @Test
    @DisplayName("3.2 equal differences: the difference, no t, no chance")
    void noSpread() {
        Answer answer = PairedStrips.FIGURE.answer(Map.of("a", "212.4,205.1,198.7", "b", "205,197.7,191.3"));
        assertThat(answer.number("difference")).isCloseTo(7.4, within(1e-9));
        assertThat(answer.word("t")).isEqualTo("none");
        assertThat(answer.word("chance_above_break_even")).isEqualTo("none");
        assertThat(answer.cautions()).anyMatch(caution -> caution.startsWith("Weak: 3 blocks"));
    }

    @Test
    @DisplayName("3.1 one strip each way is a demonstration, not a trial")
    void oneBlock() {
        assertThatThrownBy(() -> PairedStrips.FIGURE.answer(Map.of("a", "200", "b", "190")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("demonstration");
        assertThatThrownBy(() -> BlockAnova.FIGURE.answer(Map.of("yields", "200,190")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("demonstration");
    }

    @Test
    @DisplayName("3.3 with two treatments F is t² of the pairs")
    void fIsTSquared() {
        SplittableRandom random = new SplittableRandom(33);
        for (int round = 0; round < 50; round++) {
            StringBuilder a = new StringBuilder();
            StringBuilder b = new StringBuilder();
            StringBuilder rows = new StringBuilder();
            for (int i = 0; i < 5; i++) {
                double first = random.nextDouble(150, 220);
                double second = random.nextDouble(150, 220);
                String comma = i == 0 ? "" : ",";
                a.append(comma).append(first);
                b.append(comma).append(second);
                rows.append(i == 0 ? "" : ";").append(first).append(",").append(second);
            }
            Answer pairs = PairedStrips.FIGURE.answer(Map.of("a", a.toString(), "b", b.toString()));
            Answer blocks = BlockAnova.FIGURE.answer(Map.of("yields", rows.toString()));
            double t = pairs.number("t");
            assertThat(blocks.number("f")).isCloseTo(t * t, within(1e-8 * (1 + t * t)));
            assertThat(blocks.number("p")).isCloseTo(pairs.number("p"), within(1e-9));
        }
    }

    @Test
    @DisplayName("3.5 two groups, δ 1, σ 1, power .9: 22.02 a group (R power.t.test help, from memory)")
    void twoGroups() {
        assertPrinted(ReplicatesNeeded.exactOfTwoGroups(1, .05, .9), "22.02");
    }

    @Test
    @DisplayName("3.5 rough per treatment: CV 6 % and a 5 % difference 22.6, CV 10 % 62.8 (computed)")
    void rough() {
        assertPrinted(2 * ReplicatesNeeded.firstGuess(5 / 6.0, .05, .8), "22.6");
        assertPrinted(2 * ReplicatesNeeded.firstGuess(5 / 10.0, .05, .8), "62.8");
    }

    @Test
    @DisplayName("3.5 power is exact where t is steep: two pairs, α .001, against a Student's t shifted by nothing")
    void steepPower() {
        double limit = StudentT.quantile(.9995, 1);
        assertThat(NoncentralT.above(limit, 0, 1)).isCloseTo(.0005, within(1e-9));
        assertThat(NoncentralT.above(2.5706, 0, 5)).isCloseTo(.025, within(1e-6));
    }

    @Test
    @DisplayName("3.6 set A does not depend on the order of the sites")
    void order() {
        Map<String, String> typed = new HashMap<>();
        typed.put("effects", "3.0,9.5,1.1,7.8,4.2");
        typed.put("variances", "1.00,6.25,1.44,4.00,2.25");
        assertPrinted(RandomEffects.FIGURE.answer(typed).number("pooled"), "4.543226");
    }

    @Test
    @DisplayName("4.1 ryegrass: standard errors of R package drc to 2 %, fitted curve to the last digit, least squares")
    void ryegrass() {
        Answer fit = DoseResponseFit.FIGURE.answer(
                DoseResponseFit.FIGURE.examples().get(0).inputs());
        String[] keys = {"slope_b_se", "lower_c_se", "upper_d_se", "ed50_e_se"};
        double[] errors = {.46506, .21219, .18857, .18573};
        for (int i = 0; i < keys.length; i++) {
            assertThat(fit.number(keys[i])).isCloseTo(errors[i], within(.02 * errors[i]));
        }
        LogLogistic curve = new LogLogistic(
                fit.number("slope_b"), fit.number("lower_c"), fit.number("upper_d"), fit.number("ed50_e"));
        double[] doses = {0, 1, 2, 3, 5, 10, 30};
        String[] left = {"7.79296", "7.54112", "6.18516", "4.24146", "1.85233", ".68888", ".48947"};
        for (int i = 0; i < doses.length; i++) {
            assertPrinted(curve.response(doses[i]), left[i]);
        }
        assertPrinted(fit.number("residual_se") * fit.number("residual_se") * 20, "5.400215");
    }

    @Test
    @DisplayName("4.1 a response that rises with the dose is refused in words")
    void risingResponse() {
        assertThatThrownBy(() -> DoseResponseFit.FIGURE.answer(
                        Map.of("doses", "0,1,2,4,8,16", "responses", "1,1.2,2,3.5,5,5.5")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("fall as the dose rises");
    }
}
