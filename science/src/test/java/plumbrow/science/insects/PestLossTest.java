package plumbrow.science.insects;

import static org.assertj.core.api.Assertions.assertThat;
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
import plumbrow.science.figure.Figure;

@DisplayName("Losses and thresholds of insects, against values from outside")
class PestLossTest {

    @ParameterizedTest(name = "loss per larva {0}: {1} at full control, {2} at three quarters")
    @CsvSource({".0594, .351, .468", ".0501, .416, .554", ".0313, .666, .887", ".0241, .864, 1.153"})
    @DisplayName("3.1 borer injury level by stage, C 15, $4, 180 bu (computed; losses Bode & Calvin 1990)")
    void borerInjuryLevel(double perLarva, String full, String threeQuarters) {
        assertPrinted(EconomicInjuryLevel.density(15, 4, perLarva, 180, 1), full);
        assertPrinted(EconomicInjuryLevel.density(15, 4, perLarva, 180, .75), threeQuarters);
    }

    @Test
    @DisplayName("1.1 the injury level falls with price, yield and efficacy and rises with cost")
    void injuryLevelDirections() {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < 500; i++) {
            double cost = random.nextDouble(5, 40);
            double price = random.nextDouble(2, 14);
            double perPest = random.nextDouble(.001, .1);
            double yield = random.nextDouble(30, 250);
            double control = random.nextDouble(.3, .9);
            double level = EconomicInjuryLevel.density(cost, price, perPest, yield, control);
            assertThat(EconomicInjuryLevel.density(cost * 1.1, price, perPest, yield, control))
                    .isGreaterThan(level);
            assertThat(EconomicInjuryLevel.density(cost, price * 1.1, perPest, yield, control))
                    .isLessThan(level);
            assertThat(EconomicInjuryLevel.density(cost, price, perPest, yield * 1.1, control))
                    .isLessThan(level);
            assertThat(EconomicInjuryLevel.density(cost, price, perPest, yield, control * 1.1))
                    .isLessThan(level);
            assertThat(level * price * perPest * yield * control).isCloseTo(cost, within(1e-9));
        }
    }

    @Test
    @DisplayName(
            "3.1 five larvae a plant at V10 lose .25 with the further-larva rule of the Illinois worksheet (computed)")
    void crowdedLarvae() {
        assertPrinted(BorerLoss.crowdedShare(5, .06), ".250");
        assertThat(BorerLoss.crowdedShare(2, .06)).isEqualTo(BorerLoss.share(2, .06));
        assertThat(BorerLoss.share(50, .06)).isEqualTo(1);
    }

    @ParameterizedTest(name = "{0} nodes of {1} bu at ${2}: {3} bu, ${4}")
    @CsvSource({
        "0.25, 200, 5, 7.50, 37.50",
        "0.5, 200, 5, 15.00, 75.00",
        "1.0, 200, 5, 30.00, 150.00",
        "1.68, 180, 4.50, 45.36, 204.12"
    })
    @DisplayName("2.2 rootworm loss at .15 per node, checks 2a and 2b (computed)")
    void rootworm(double nodes, double yield, double price, String bushels, String dollars) {
        double lost = RootwormLoss.share(nodes, .15) * yield;
        assertPrinted(lost, bushels);
        assertPrinted(lost * price, dollars);
        assertThat(RootwormLoss.share(3, .5)).isEqualTo(1);
    }

    @Test
    @DisplayName("2.3 combined control never exceeds 1 and never falls below its best tactic")
    void combinedControl() {
        SplittableRandom random = new SplittableRandom(33);
        for (int i = 0; i < 500; i++) {
            double first = random.nextDouble();
            double second = random.nextDouble();
            assertThat(CombinedControl.of(first, second)).isBetween(Math.max(first, second), 1.0);
            assertThat(CombinedControl.of(new double[] {first, second}))
                    .isCloseTo(CombinedControl.of(first, second), within(1e-12));
        }
        assertThat(CombinedControl.left()).isEqualTo(1);
    }

    @ParameterizedTest(name = "{0} nodes: loss {1} bu, refuge costs ${2}")
    @CsvSource({".5, 15, 3.75", "1, 30, 7.50", "2, 60, 15.00"})
    @DisplayName("6i rootworm in a 5 % blend, 200 bu, $5 (computed)")
    void blendRootworm(double nodes, double unprotected, String dollars) {
        double loss = RootwormLoss.share(nodes, .15) * 200;
        assertThat(loss).isCloseTo(unprotected, within(1e-9));
        assertPrinted(BlendInsecticide.lossBuPerAcre(.05, loss, 0, 0, 0) * 5, dollars);
    }

    @Test
    @DisplayName("6j a 5 % blend alone pays from 2.67 nodes on: $6, e .75, C 18, 200 bu (computed)")
    void blendBreakEvenNodes() {
        Answer answer = BlendInsecticide.FIGURE.answer(Map.of(
                "refuge_share", "0.05",
                "unprotected_loss_bu_ac", "40",
                "price_usd_bu", "6",
                "efficacy", "0.75",
                "cost_usd_ac", "18"));
        assertPrinted(answer.number("break_even_unprotected_loss_bu_ac") / (.15 * 200), "2.67");
    }

    @Test
    @DisplayName("6 a break-even chance below 0 always pays, above 1 never: said in words")
    void blendInWords() {
        assertThat(blend("4").cautions()).anyMatch(caution -> caution.startsWith("Pays on the refuge plants alone"));
        assertThat(blend("900").cautions()).anyMatch(caution -> caution.startsWith("Never pays at this price"));
    }

    private static Answer blend(String cost) {
        return BlendInsecticide.FIGURE.answer(Map.of(
                "refuge_share", "0.05",
                "unprotected_loss_bu_ac", "40",
                "failure_chance", "0.1",
                "failure_loss_bu_ac", "30",
                "price_usd_bu", "6",
                "efficacy", "0.75",
                "cost_usd_ac", cost));
    }

    @Test
    @DisplayName("1.2 at the threshold there are no days left; with no pest, or no rise, there is no date")
    void noDate() {
        assertThat(answer(DaysToThreshold.FIGURE, Map.of("count", "300", "threshold", "250"))
                        .number("days"))
                .isZero();
        assertThat(answer(DaysToThreshold.FIGURE, Map.of("count", "0")).word("days"))
                .isEqualTo("never");
        Answer falling = answer(DoublingTime.FIGURE, Map.of("first", "180", "second", "40", "threshold", "250"));
        assertThat(falling.word("doubling_days")).startsWith("no date");
        assertThat(falling.word("days")).startsWith("no date");
    }

    @Test
    @DisplayName("1.3 a price has no place in the aphid threshold, and no lead lowers it below 250")
    void aphidThreshold() {
        assertThat(AphidThreshold.FIGURE.inputs())
                .noneMatch(input -> input.key().contains("price"));
        Answer answer = AphidThreshold.FIGURE.answer(Map.of("lead_days", "14", "doubling_days", "1"));
        assertThat(answer.number("threshold")).isEqualTo(250);
        assertThat(answer.cautions()).anyMatch(caution -> caution.startsWith("Held at 250"));
    }

    @Test
    @DisplayName("5.7 the band around a field takes exactly the refuge")
    void bandTakesTheShare() {
        SplittableRandom random = new SplittableRandom(57);
        for (int i = 0; i < 500; i++) {
            double length = random.nextDouble(100, 6000);
            double width = random.nextDouble(100, 6000);
            double share = random.nextDouble(.01, 1);
            double band = RefugeLayout.bandFt(length, width, share);
            double inside = (length - 2 * band) * (width - 2 * band);
            assertThat(1 - inside / (length * width)).isCloseTo(share, within(1e-9));
        }
    }

    @Test
    @DisplayName("1.2 doubling time and days to threshold are inverse to each other")
    void growth() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 500; i++) {
            double first = random.nextDouble(1, 200);
            double second = first * random.nextDouble(1.01, 20);
            double days = random.nextDouble(1, 14);
            double doubling = DaysToThreshold.doublingDays(first, second, days);
            assertThat(DaysToThreshold.days(first, second, doubling)).isCloseTo(days, within(1e-9));
        }
    }

    private static Answer answer(Figure figure, Map<String, String> changes) {
        Map<String, String> typed = new HashMap<>(figure.examples().get(0).inputs());
        typed.putAll(changes);
        return figure.answer(typed);
    }
}
