package plumbrow.science.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;
import static plumbrow.science.Printed.numbers;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Price and yield moving together, against values from outside")
class RankCorrelationTest {

    @Test
    @DisplayName("2.4 normal correlation from Spearman: −.30 → −.31287, −.50 → −.51764, .80 → .81347")
    void copula() {
        assertPrinted(RankCorrelation.normalFromSpearman(-.30), "-.31287");
        assertPrinted(RankCorrelation.normalFromSpearman(-.50), "-.51764");
        assertPrinted(RankCorrelation.normalFromSpearman(.80), ".81347");
        assertThat(RankCorrelation.normalFromKendall(1)).isEqualTo(1);
        assertThat(RankCorrelation.normalFromKendall(0)).isZero();
    }

    @Test
    @DisplayName("2.4 Iman and Conover on ten prices and yields, target −.6")
    void reordered() {
        double[] price = numbers("3.1 3.5 3.8 4.0 4.2 4.4 4.7 5.0 5.4 6.2");
        double[] yield = numbers("172 205 120 188 196 150 181 212 165 177");
        assertPrinted(RankCorrelation.spearman(price, yield), ".0182");
        double[][] together =
                RankCorrelation.reordered(new double[][] {price, yield}, new double[][] {{1, -.6}, {-.6, 1}});
        assertThat(together[0]).containsExactly(price);
        assertThat(together[1]).containsExactly(numbers("196 212 172 181 188 165 177 205 120 150"));
        assertPrinted(RankCorrelation.spearman(together[0], together[1]), "-.600");
        assertPrinted(RankCorrelation.pearson(together[0], together[1]), "-.642");
    }

    @Test
    @DisplayName("2.4 mean of price times yield, both lognormal: 801.18 against 810.00 if independent")
    void meanOfProduct() {
        LognormalDistribution price = LognormalDistribution.ofPrice(4.50, .25, .5);
        LognormalDistribution yield = LognormalDistribution.ofMeanAndCv(180, .20);
        assertPrinted(yield.logSd(), ".19804");
        double r = RankCorrelation.normalFromSpearman(-.30);
        assertPrinted(price.mean() * yield.mean() * Math.exp(r * price.logSd() * yield.logSd()), "801.18");
    }

    @Test
    @DisplayName("Reordering keeps every draw and comes close to the target for three variables")
    void marginsStay() {
        SplittableRandom random = new SplittableRandom(11);
        double[][] draws = new double[3][5000];
        for (double[] variable : draws) {
            Arrays.setAll(variable, k -> -Math.log(1 - random.nextDouble()));
        }
        double[][] target = {{1, -.5, .3}, {-.5, 1, .1}, {.3, .1, 1}};
        double[][] together = RankCorrelation.reordered(draws, target);
        for (int v = 0; v < 3; v++) {
            assertThat(Arrays.stream(together[v]).sorted().toArray())
                    .containsExactly(Arrays.stream(draws[v]).sorted().toArray());
            for (int w = 0; w < v; w++) {
                assertThat(RankCorrelation.spearman(together[v], together[w]))
                        .isCloseTo(6 / Math.PI * Math.asin(target[v][w] / 2), within(.01));
            }
        }
        assertThat(together[0]).containsExactly(draws[0]);
    }

    @Test
    @DisplayName("Correlations that can't hold together are refused with the pair to change")
    void impossible() {
        assertThatThrownBy(() -> new Cholesky(new double[][] {{1, .9, .9}, {.9, 1, -.9}, {.9, -.9, 1}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("variables 2 and 3");
        assertThatThrownBy(() -> new Cholesky(new double[][] {{1, 1.2}, {1.2, 1}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("variables 1 and 2");
    }

    @Test
    @DisplayName("Taking out a correlation undoes putting it in")
    void undone() {
        Cholesky triangle = new Cholesky(new double[][] {{1, -.3, .2}, {-.3, 1, .4}, {.2, .4, 1}});
        double[] values = {.4, -1.1, 2.2};
        triangle.correlate(values);
        triangle.decorrelate(values);
        assertThat(values).containsExactly(new double[] {.4, -1.1, 2.2}, within(1e-12));
    }
}
