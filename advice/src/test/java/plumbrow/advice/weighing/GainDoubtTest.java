package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weighing.OneField.NONE;
import static plumbrow.advice.weighing.OneField.harvest;
import static plumbrow.advice.weighing.OneField.plant;
import static plumbrow.advice.weighing.OneField.spray;

import java.util.Objects;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.science.chance.PertDistribution;

/** What is doubt about the field and what about the year, against closed forms. */
class GainDoubtTest {
    @ParameterizedTest(name = "gain {0} bu, spread {1} bu")
    @CsvSource({"5, 1", "5, 4", "2, 8"})
    @DisplayName("price × bushels, independent: field p²·vg, year m²·vp, both at once vp·vg, over their sum")
    void product(double bushels, double spread) {
        PertDistribution distribution = new PertDistribution(2, 4, 8);
        FieldAdvice advice = new OneField()
                .assumptions(AssumptionQuantity.PRICE, new Distribution.Pert(2, 4, 8))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Fixed(200))
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 100, 0, new Distribution.Normal(bushels, spread / bushels))
                .program("plain seed", true, plant("Plain"), harvest(2))
                .program("dearer seed", false, plant("Dearer"), harvest(2))
                .weigh(20_000);
        GainDoubt doubt = Objects.requireNonNull(advice.gainDoubt());
        double price = distribution.mean();
        double[] prices = distribution.strata(100_000);
        double vp = 0;
        for (double each : prices) {
            vp += (each - price) * (each - price) / prices.length;
        }
        double vg = spread * spread;
        double all = price * price * vg + bushels * bushels * vp + vp * vg;
        assertThat(doubt.fieldShare()).isCloseTo(price * price * vg / all, within(0.02));
        assertThat(doubt.yearShare()).isCloseTo(bushels * bushels * vp / all, within(0.02));
    }

    @Test
    @DisplayName("a trait that works in half of the cases: both cases with their own gain and odds, by hand")
    void trait() {
        // 20 % of 200 bu at stake. Works: 0.9·40 = 36 bu kept alone; the spray takes 0.75 of the 4 bu left: +3 bu.
        // Fails: the spray saves 0.75·40 = 30 bu. At the drawn price p it costs $18: 3p − 18 and 30p − 18.
        FieldAdvice advice = new OneField()
                .assumptions(AssumptionQuantity.PRICE, new Distribution.Triangular(4, 5, 9))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Fixed(200))
                .seed("Seed", 100, 0, NONE, "Cry3Bb1")
                .trait("Cry3Bb1", "Cry3", "corn rootworm", new Distribution.Fixed(0.9))
                .doubt("Cry3", "corn rootworm", 0.5)
                .insecticide("Full", 3)
                .control("Full", "corn rootworm", 6, new Distribution.Fixed(0.75))
                .insect("corn rootworm", new Distribution.Fixed(1), new Distribution.Fixed(20))
                .program("none", true, plant("Seed"), harvest(2))
                .program("full", false, plant("Seed"), spray(2, "Full", 6), harvest(3))
                .weigh(20_000);
        GainDoubt doubt = Objects.requireNonNull(advice.gainDoubt());
        assertThat(doubt.input()).isEqualTo("trait works: Cry3 on corn rootworm");
        GainDoubt.Case works = doubt.cases().get(0);
        GainDoubt.Case fails = doubt.cases().get(1);
        assertThat(works.share()).isCloseTo(0.5, within(1e-9));
        assertThat(works.meanGainUsdPerAcre()).isCloseTo(3 * 6 - 18, within(0.1));
        assertThat(fails.meanGainUsdPerAcre()).isCloseTo(30 * 6 - 18, within(0.5));
        // P(price > 6) of the triangle 4, 5, 9: (9 − 6)² / (5·4) = .45.
        assertThat(works.chanceAhead()).isCloseTo(0.45, within(0.015));
        assertThat(fails.chanceAhead()).isEqualTo(1);
        assertThat(doubt.says())
                .contains("whether Cry3 works on corn rootworm here", "If Cry3 works on corn rootworm here, it earns")
                .contains("If not, it earns $162/ac more on average and is ahead in 100 of 100");
        // Between the two cases (½·½·162²), within them the year alone: Var E(g|price) = 16.5²·Var p; the triangle's is
        // 7/6.
        double field = 0.25 * Math.pow(27 * 6, 2);
        double year = 16.5 * 16.5 * 7 / 6;
        double all = field + (9 + 900) / 2.0 * (7 / 6.0);
        assertThat(doubt.fieldShare()).isCloseTo(field / all, within(0.02));
        assertThat(doubt.yearShare()).isCloseTo(year / all, within(0.02));
    }

    @Test
    @DisplayName("doubt about the year alone says that none was entered about the field")
    void yearAlone() {
        FieldAdvice advice = new OneField()
                .assumptions(AssumptionQuantity.PRICE, new Distribution.Pert(2, 4, 8))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Fixed(200))
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 110, 0, new Distribution.Fixed(5))
                .program("plain seed", true, plant("Plain"), harvest(2))
                .program("dearer seed", false, plant("Dearer"), harvest(2))
                .weigh(1_000);
        GainDoubt doubt = Objects.requireNonNull(advice.gainDoubt());
        assertThat(doubt.fieldShare()).isZero();
        assertThat(doubt.yearShare()).isEqualTo(1);
        assertThat(doubt.says())
                .contains("what the year brings, above all price of corn", "No doubt that counts was entered");
    }
}
