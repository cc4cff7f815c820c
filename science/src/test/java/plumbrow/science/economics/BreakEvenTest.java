package plumbrow.science.economics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Break-evens: directions and words")
class BreakEvenTest {
    private static final int ROUNDS = 500;

    @Test
    @DisplayName("1.1 break-even gain falls with the price, rises with cost and handling; doubling the price halves it")
    void directions() {
        SplittableRandom random = new SplittableRandom(101);
        for (int i = 0; i < ROUNDS; i++) {
            double cost = random.nextDouble(1, 80);
            double price = random.nextDouble(2, 14);
            double handling = random.nextDouble(0, 1);
            double share = random.nextDouble(.6, 1);
            double gain = BreakEvenGain.buPerAcre(cost, price, handling, share, 1);
            assertThat(BreakEvenGain.buPerAcre(cost, price * 1.1, handling, share, 1))
                    .isLessThan(gain);
            assertThat(BreakEvenGain.buPerAcre(cost * 1.1, price, handling, share, 1))
                    .isGreaterThan(gain);
            assertThat(BreakEvenGain.buPerAcre(cost, price, handling + .05, share, 1))
                    .isGreaterThan(gain);
            assertThat(BreakEvenGain.buPerAcre(cost, 2 * price))
                    .isCloseTo(BreakEvenGain.buPerAcre(cost, price) / 2, within(1e-12));
            assertThat(BreakEvenGain.buPerAcre(cost, price, 0, 1, 1)).isEqualTo(BreakEvenGain.buPerAcre(cost, price));
            assertThat(BreakEvenPrice.usdPerBu(cost, gain, handling, share, 1)).isCloseTo(price, within(1e-9));
        }
    }

    @Test
    @DisplayName("At the break-even chance the expected saving is the cost")
    void chanceBalances() {
        SplittableRandom random = new SplittableRandom(102);
        for (int i = 0; i < ROUNDS; i++) {
            double cost = random.nextDouble(1, 60);
            double loss = random.nextDouble(1, 60);
            double control = random.nextDouble(.1, 1);
            double price = random.nextDouble(2, 14);
            double chance = BreakEvenChance.chance(cost, loss, control, price);
            assertThat(chance * loss * control * price).isCloseTo(cost, within(1e-9));
        }
    }

    @Test
    @DisplayName("1.1 a break-even chance above 1 is given as it is, and said to never pay")
    void neverPays() {
        Answer answer =
                BreakEvenChance.FIGURE.answer(Map.of("cost_usd_ac", "60", "loss_bu_ac", "10", "price_usd_bu", "4"));
        assertThat(answer.number("chance")).isCloseTo(1.5, within(1e-12));
        assertThat(answer.word("verdict")).isEqualTo("never pays at this price");
        assertThat(answer.cautions()).anyMatch(caution -> caution.startsWith("Never pays at this price"));
    }

    @Test
    @DisplayName("1.1 where crop share × price does not exceed handling, no yield gain can pay")
    void noGainCanPay() {
        Map<String, String> typed =
                Map.of("extra_cost_usd_ac", "22", "price_usd_bu", "4", "handling_usd_bu", "2.5", "crop_share", "0.5");
        assertThatThrownBy(() -> SharedBreakEven.FIGURE.answer(typed))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("handling_usd_bu")
                .hasMessageContaining("2.5")
                .hasMessageContaining("no yield gain can pay");
    }

    @Test
    @DisplayName("1.1 a cheaper program has no return per dollar")
    void cheaperProgram() {
        Answer answer =
                MarginGain.FIGURE.answer(Map.of("gain_bu_ac", "0", "extra_cost_usd_ac", "-10", "price_usd_bu", "4"));
        assertThat(answer.outputs()).doesNotContainKey("return_per_dollar");
        assertThat(answer.number("margin_usd_ac")).isEqualTo(10);
    }

    @Test
    @DisplayName("Seed cost does not care for the unit: half the bag at half the price costs the same")
    void unitOfTheBag() {
        SplittableRandom random = new SplittableRandom(103);
        for (int i = 0; i < ROUNDS; i++) {
            double price = random.nextDouble(20, 500);
            double seeds = random.nextDouble(10_000, 200_000);
            assertThat(SeedCost.usdPerAcre(price / 2, 40_000, seeds))
                    .isCloseTo(SeedCost.usdPerAcre(price, 80_000, seeds), within(1e-9));
        }
    }

    @Test
    @DisplayName("1.3 saved seed costs more with more cleanout; weak germination is warned of")
    void savedSeed() {
        assertThat(SavedSeedCost.usdPerAcre(.9, .2, 10, 1, 6))
                .isGreaterThan(SavedSeedCost.usdPerAcre(.9, .1, 10, 1, 6));
        Map<String, String> typed =
                new HashMap<>(SavedSeedCost.FIGURE.examples().get(0).inputs());
        typed.put("germination_pct", "70");
        assertThat(SavedSeedCost.FIGURE.answer(typed).cautions()).anyMatch(caution -> caution.contains("below 80 %"));
    }

    @Test
    @DisplayName("1.4 saved seed that gains nothing by age never reaches one; dearer saved seed is there at once")
    void savedSeedAge() {
        Map<String, String> typed =
                new HashMap<>(GeneticLag.BREAK_EVEN_AGE.examples().get(0).inputs());
        typed.put("gain_bu_ac_year", "0");
        assertThat(GeneticLag.BREAK_EVEN_AGE.answer(typed).word("years")).isEqualTo("never");
        typed.put("saved_usd_ac", "70");
        assertThat(GeneticLag.BREAK_EVEN_AGE.answer(typed).number("years")).isZero();
    }
}
