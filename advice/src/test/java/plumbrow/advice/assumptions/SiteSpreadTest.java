package plumbrow.advice.assumptions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.weeds.HyperbolicLoss;

/** Checks computed apart on a normal grid; weighed on 20,000 strata. */
@DisplayName("Spread between fields and years, where one number was entered")
class SiteSpreadTest {
    private static final int STRATA = 20_000;

    @ParameterizedTest
    @CsvSource({
        "3, 45, 2, 5.294, 6.375, 4.298, 2.05, 5.29, 12.18",
        "136, 90, .1, 11.815, 14.067, 9.225, 4.62, 11.80, 26.65"
    })
    @DisplayName("the mean loss over fields is above the loss at the middle loss per plant (2a, 2b)")
    void lossPerPlant(
            double perPlant,
            double most,
            double density,
            double atMiddle,
            double mean,
            double sd,
            double low,
            double median,
            double high) {
        SiteSpread.Drawn drawn = SiteSpread.lossPerWeed(new Distribution.Fixed(perPlant), false);
        double[] loss = Arrays.stream(Chances.of(drawn.distribution()).strata(STRATA))
                .map(one -> HyperbolicLoss.ofLoad(one * density, most))
                .toArray();

        assertThat(HyperbolicLoss.ofLoad(perPlant * density, most)).isCloseTo(atMiddle, within(.0051));
        assertThat(SortedDraws.mean(loss)).isCloseTo(mean, within(.0011));
        assertThat(sd(loss)).isCloseTo(sd, within(.0031));
        // Its percentiles come off a grid and are up to 1 in 1,000 low: 3·2·e^{1.2816·0.8} gives 12.19, not 12.18.
        assertThat(SortedDraws.quantile(loss, .1)).isCloseTo(low, within(.0051 + .0011 * low));
        assertThat(SortedDraws.quantile(loss, .5)).isCloseTo(median, within(.0051 + .0011 * median));
        assertThat(SortedDraws.quantile(loss, .9)).isCloseTo(high, within(.0051 + .0011 * high));
    }

    @ParameterizedTest
    @CsvSource({
        ".85, .95, .8148, .1337, .6265, .9504, .3569",
        ".95, .95, .9295, .0658, .8490, .9847, .0505",
        ".85, .50, .8392, .0669, .7491, .9149, .2430",
        ".60, .95, .5843, .1961, , , .8491"
    })
    @DisplayName("control from trial to trial: mean, SD, 10 and 90 %, chance of less than 80 % (2c to 2f)")
    void control(double median, double spread, double mean, double sd, Double low, Double high, double below80) {
        plumbrow.science.chance.Distribution distribution = Chances.of(new Distribution.LogOdds(median, spread));

        assertThat(distribution.mean()).isCloseTo(mean, within(.000051));
        assertThat(distribution.sd()).isCloseTo(sd, within(.000051));
        if (low != null && high != null) {
            assertThat(distribution.quantile(.1)).isCloseTo(low, within(.000051));
            assertThat(distribution.quantile(.9)).isCloseTo(high, within(.000051));
        }
        double[] strata = distribution.strata(STRATA);
        assertThat(Arrays.stream(strata).filter(share -> share < .8).count() / (double) STRATA)
                .isCloseTo(below80, within(.000151));
    }

    @ParameterizedTest
    @CsvSource({".6, 2.68, 1.197", ".8, 3.73, 1.377", "1.0, 5.18, 1.649"})
    @DisplayName("factors of the 90 % band and of mean over median (2g)")
    void factors(double spread, double ninety, double meanOverMedian) {
        plumbrow.science.chance.Distribution distribution = Chances.of(new Distribution.Factor(5, spread));

        assertThat(distribution.quantile(.95) / 5).isCloseTo(ninety, within(.0051));
        assertThat(distribution.mean() / 5).isCloseTo(meanOverMedian, within(.00051));
    }

    @Test
    @DisplayName("a spread that was entered is kept; none and all are not spread")
    void entered() {
        Distribution typed = new Distribution.Pert(1, 2, 4);
        assertThat(SiteSpread.lossPerWeed(typed, true).distribution()).isEqualTo(typed);
        assertThat(SiteSpread.lossPerWeed(typed, true).source("told")).isEqualTo("told");
        assertThat(SiteSpread.soil(new Distribution.Fixed(0), false).spread()).isFalse();
        assertThat(SiteSpread.trait(new Distribution.Fixed(1)).spread()).isFalse();
        assertThat(SiteSpread.resistant(1.0).distribution()).isEqualTo(new Distribution.Fixed(1));
    }

    @Test
    @DisplayName("what is borrowed is wider, what is rated more often narrower, never below the spread between trials")
    void wider() {
        assertThat(sd(SiteSpread.lossPerWeed(new Distribution.Fixed(2), true).distribution()))
                .isGreaterThan(sd(
                        SiteSpread.lossPerWeed(new Distribution.Fixed(2), false).distribution()));
        double one = sd(SiteSpread.ofRatings(.9, 1, true, false));
        assertThat(sd(SiteSpread.ofRatings(.9, 1, true, true))).isGreaterThan(one);
        assertThat(sd(SiteSpread.ofRatings(.9, 8, true, false)))
                .isLessThan(one)
                .isGreaterThan(
                        sd(SiteSpread.soil(new Distribution.Fixed(.9), true).distribution()));
        assertThat(sd(SiteSpread.soil(new Distribution.Fixed(.9), false).distribution()))
                .isGreaterThan(
                        sd(SiteSpread.soil(new Distribution.Fixed(.9), true).distribution()));
    }

    private static double sd(Distribution distribution) {
        return Chances.of(distribution).sd();
    }

    private static double sd(double[] values) {
        double mean = SortedDraws.mean(values);
        return Math.sqrt(DoubleStream.of(values)
                .map(one -> (one - mean) * (one - mean))
                .average()
                .orElseThrow());
    }
}
