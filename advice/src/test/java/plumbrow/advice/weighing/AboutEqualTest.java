package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static plumbrow.advice.weighing.OneField.NONE;
import static plumbrow.advice.weighing.OneField.harvest;
import static plumbrow.advice.weighing.OneField.plant;
import static plumbrow.advice.weighing.OneField.spray;

import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.ScoutingTrigger;

/** When programs are told as about equal, and that none that loses to the baseline is advised. */
class AboutEqualTest {
    @ParameterizedTest(name = "${0}/ac, ahead in {1}, behind in {2}: ahead {3}")
    @CsvSource({
        "5.90, 0.50, 0.50, false",
        "5.90, 0.5499, 0.4501, false",
        "5.90, 0.55, 0.45, true",
        "6.00, 0.30, 0.70, true",
        "2.00, 0.55, 0.45, true",
        "1.99, 0.99, 0.01, false",
        "2.50, 0.28, 0, true",
        "2.50, 0.30, 0.05, true",
        "2.50, 0.23, 0.18, true",
        "2.50, 0.21, 0.18, false",
        "2.50, 0, 0, false",
        "-1, 1, 0, false"
    })
    @DisplayName("ahead: $2/ac and 55 of 100 of the seasons that tell them apart, or $6/ac")
    void rule(double gain, double ahead, double behind, boolean expected) {
        assertThat(EqualRule.DEFAULT.ahead(gain, new Leads(ahead, 1 - ahead - behind, behind)))
                .isEqualTo(expected);
    }

    @Test
    @DisplayName("the rule scales with what a farm calls worth telling, and refuses what is no amount")
    void another() {
        assertThat(new EqualRule(5).ahead(5.9, new Leads(0.54, 0, 0.46))).isFalse();
        assertThat(new EqualRule(5).ahead(15, new Leads(0.4, 0, 0.6))).isTrue();
        assertThat(new EqualRule(5).words()).contains("$5.00/ac", "$15.00/ac", "less than $5.00/ac is level");
        assertThatThrownBy(() -> new EqualRule(0)).hasMessageContaining("more than 0");
    }

    @Test
    @DisplayName("a season is level where the two differ by less than is worth telling; counts by hand")
    void level() {
        double[] one = {10, 10, 10, 10, 10, 10, 10, 10};
        double[] other = {8, 8.01, 10, 11.99, 12, 30, 10.5, 0};
        Leads leads = EqualRule.DEFAULT.leads(one, other, 1);
        assertThat(leads).isEqualTo(new Leads(2 / 8.0, 4 / 8.0, 2 / 8.0));
        assertThat(leads.reversed()).isEqualTo(EqualRule.DEFAULT.leads(other, one, 1));
        assertThat(EqualRule.DEFAULT.leads(one, other, 10)).isEqualTo(new Leads(0, 7 / 8.0, 1 / 8.0));
        assertThat(new Leads(0.302, 0.694, 0.004).words()).isEqualTo("30, level in 69, behind in fewer than 1 of 100");
        assertThat(new Leads(0.377, 0.108, 0.515).words()).isEqualTo("38, level in 10, behind in 52 of 100");
        assertThat(new Leads(0, 1, 0).words()).isEqualTo("0, level in 100, behind in 0 of 100");
    }

    @Test
    @DisplayName(
            "an option that costs a dollar in most seasons and earns much in some leads, and the three counts say so")
    void option() {
        // Scouting for $1; one season in five the insect takes $40/ac, of which the spray saves all but its $10.
        FieldAdvice advice = new OneField()
                .assumptions(4, 200)
                .seed("Plain", 100, 0, NONE)
                .insecticide("Guard", 10)
                .control("Guard", "beetle", 1, new Distribution.Fixed(1))
                .insect("beetle", new Distribution.Chance(0.2), new Distribution.Even(4.999, 5.001))
                .program("none", true, plant("Plain"), harvest(2))
                .program(
                        "scout",
                        false,
                        plant("Plain"),
                        spray(2, "Guard", 1).waitingFor(new ScoutingTrigger("beetle", 0.5, 1.0)),
                        harvest(3))
                .weigh(10_000);
        assertThat(advice.advised()).isEqualTo("scout");
        assertThat(advice.aboutEqual()).isNull();
        // .2 × (40 − 10) − 1 = 5, ahead by 29 in 20 of 100, level (a dollar behind) in 80.
        assertThat(advice.sentence())
                .contains(
                        "earns $5.00/ac more on average, ahead in 20, level in 80, behind in 0 of 100 simulated seasons");
    }

    /** Gain of the dearer seed over the plain one: normal with this mean and spread [$/ac]. */
    private static FieldAdvice gain(double mean, double sd) {
        return new OneField()
                .assumptions(4, 200)
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 112, 0, new Distribution.Normal((mean + 12) / 4, sd / (mean + 12)))
                .program("plain seed", true, plant("Plain"), harvest(2))
                .program("dearer seed", false, plant("Dearer"), harvest(2))
                .weigh(10_000);
    }

    @Test
    @DisplayName(
            "$5 ahead at 54 of 100 is no order: both are named, with the cheapest, the safest and the most often best")
    void nearTie() {
        FieldAdvice advice = gain(5, 48); // Φ(5/48) = .541
        AboutEqual equal = Objects.requireNonNull(advice.aboutEqual());
        assertThat(equal.programs()).containsExactly("dearer seed", "plain seed");
        assertThat(equal.cheapest()).isEqualTo("plain seed");
        assertThat(equal.safest()).isEqualTo("plain seed");
        assertThat(equal.mostOftenBest()).isEqualTo("dearer seed");
        assertThat(advice.sentence())
                .startsWith(
                        "dearer seed and plain seed are about equal: $5.00/ac apart on average, dearer seed ahead in 54 of"
                                + " 100 simulated seasons.")
                .doesNotContain("Take");
        assertThat(advice.reason())
                .contains("plain seed is the cheapest ($100/ac) and safest", "most often best of all (in 54 of 100)");
    }

    @Test
    @DisplayName("$5 ahead at 60 of 100 is a lead")
    void lead() {
        FieldAdvice advice = gain(5, 19);
        assertThat(advice.aboutEqual()).isNull();
        assertThat(advice.leading()).containsExactly("dearer seed");
        assertThat(advice.sentence())
                .startsWith("Take dearer seed. Against plain seed it earns $5.00/ac more on average, more in 60");
    }

    @Test
    @DisplayName("what is a dollar behind the baseline is not named among its equals")
    void behindTheBaseline() {
        FieldAdvice advice = gain(-1, 20);
        assertThat(advice.advised()).isEqualTo("plain seed");
        assertThat(advice.aboutEqual()).isNull();
        assertThat(advice.sentence())
                .startsWith("Stay with plain seed. The next best, dearer seed, earns $1.00/ac less");
    }

    @Test
    @DisplayName(
            "where all that may be used lose to a barred baseline, nothing is advised and the least behind is named")
    void allLose() {
        FieldAdvice advice = new OneField()
                .assumptions(6, 200)
                .seed("Plain", 100, 0, NONE)
                .insecticide("Guard", 1)
                .control("Guard", "beetle", 6, new Distribution.Fixed(0.9))
                .insect("beetle", new Distribution.Fixed(1), new Distribution.Fixed(20))
                .program("over the label", true, plant("Plain"), spray(2, "Guard", 7), harvest(3))
                .program("none", false, plant("Plain"), harvest(2))
                .weigh(500);
        assertThat(advice.advised()).isNull();
        assertThat(advice.sentence())
                .startsWith("Nothing is advised: all that may be used earns less on average than the baseline, over the"
                        + " label, which is barred. Least behind is none, $2");
        assertThat(advice.leading()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    @DisplayName("whatever the field, none of the programs named as leading earns less than the baseline on average")
    void neverALoser(long seed) {
        FieldAdvice advice = RandomField.of(new SplittableRandom(seed)).weigh(1_000);
        assertThat(advice.leading())
                .allSatisfy(
                        name -> assertThat(advice.program(name).orElseThrow().meanGainUsdPerAcre())
                                .isNotNegative());
    }

    @Test
    @DisplayName("single values only: no odds, and it says that no doubt was entered")
    void noDoubt() {
        FieldAdvice advice = new OneField()
                .assumptions(4, 200)
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 112, 0, new Distribution.Fixed(5))
                .program("plain seed", true, plant("Plain"), harvest(2))
                .program("dearer seed", false, plant("Dearer"), harvest(2))
                .weigh(500);
        assertThat(advice.doubtEntered()).isFalse();
        assertThat(advice.odds(1)).isEqualTo("no doubt entered");
        assertThat(advice.gainDoubt()).isNull();
        assertThat(advice.sentence())
                .isEqualTo(
                        "Take dearer seed. Against plain seed it earns $8.00/ac more. No doubt was entered: every input is a"
                                + " single value, so this is one case worked through, without odds.");
        assertThat(advice.doubt()).startsWith("No doubt was entered").doesNotContain("of 10");
    }
}
