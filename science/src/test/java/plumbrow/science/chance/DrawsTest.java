package plumbrow.science.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;
import static plumbrow.science.Printed.numbers;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Draws, against values from outside")
class DrawsTest {
    private static final double[] TEN = numbers("-42 -18 -5 3 8 12 15 21 30 46");

    @Test
    @DisplayName("2.5 ten gains: quantiles, chance of paying, expected shortfall (computed)")
    void tenGains() {
        assertPrinted(SortedDraws.mean(TEN), "7");
        assertThat(SortedDraws.shareAbove(TEN, 0)).isCloseTo(.7, within(1e-12));
        assertPrinted(SortedDraws.quantile(TEN, .10), "-20.4");
        assertPrinted(SortedDraws.quantile(TEN, .25), "-3.0");
        assertThat(SortedDraws.quantile(TEN, .5)).isEqualTo(10);
        assertThat(SortedDraws.quantile(TEN, 1)).isEqualTo(46);
        assertThat(SortedDraws.worstShareMean(TEN, .10)).isCloseTo(-42, within(1e-12));
        assertThat(SortedDraws.worstShareMean(TEN, .20)).isCloseTo(-30, within(1e-12));
        assertThat(SortedDraws.worstShareMean(TEN, .25)).isCloseTo(-25, within(1e-12));
        assertThat(SortedDraws.worstShareMean(TEN, .01)).isEqualTo(-42);
        assertThat(SortedDraws.worstShareMean(TEN, 1)).isCloseTo(7, within(1e-12));
    }

    @Test
    @DisplayName("2.5 guard: 0.1 of 30 draws are three draws, not a shade more")
    void wholeCount() {
        double[] draws = new double[30];
        Arrays.setAll(draws, i -> i < 3 ? 0 : 1e9);
        assertThat(SortedDraws.worstShareMean(draws, .1)).isZero();
        double[] ten = new double[10];
        Arrays.setAll(ten, i -> i < 7 ? 0 : 1e9);
        assertThat(SortedDraws.worstShareMean(ten, .7)).isZero();
    }

    @Test
    @DisplayName("A tie with the baseline counts half")
    void ties() {
        assertThat(SortedDraws.shareAbove(numbers("-1 0 0 1"), 0)).isEqualTo(.5);
    }

    @Test
    @DisplayName("2.5 standard error of a share of .5 in 10,000 draws is 0.005")
    void shareError() {
        assertThat(SortedDraws.shareError(.5, 10_000)).isEqualTo(.005);
    }

    @ParameterizedTest(name = "{0} | {1}: {2}, {3}")
    @CsvSource({
        "10 20 30 40, 5 20 25 40, A, A",
        "10 20 30, 0 20 35, NONE, A",
        "12 18 24 30, 10 20, A, A",
        "10 20 30, 10 20 30, NONE, NONE"
    })
    @DisplayName("2.6 dominance on small samples (computed)")
    void dominance(String a, String b, Dominance first, Dominance second) {
        assertThat(Dominance.first(numbers(a), numbers(b))).isEqualTo(first);
        assertThat(Dominance.second(numbers(a), numbers(b))).isEqualTo(second);
    }

    @Test
    @DisplayName("2.6 returns of four vegetables, Hazell 1971 (agridat hazell.vegetables, data verified)")
    void vegetables() {
        double[] carrot = sorted("292 179 114 247 426 259");
        double[] celery = sorted("-128 560 648 544 182 850");
        double[] cucumber = sorted("420 187 366 249 322 159");
        double[] pepper = sorted("579 639 379 924 5 569");
        double third = 1 / 3.0;
        assertPrinted(SortedDraws.mean(carrot), "252.8333");
        assertPrinted(SortedDraws.mean(celery), "442.6667");
        assertPrinted(SortedDraws.mean(cucumber), "283.8333");
        assertPrinted(SortedDraws.mean(pepper), "515.8333");
        assertPrinted(new EmpiricalDistribution(carrot).sd(), "106.13");
        assertPrinted(new EmpiricalDistribution(celery).sd(), "353.76");
        assertPrinted(new EmpiricalDistribution(cucumber).sd(), "102.88");
        assertPrinted(new EmpiricalDistribution(pepper).sd(), "306.03");
        assertPrinted(SortedDraws.worstShareMean(carrot, third), "146.5");
        assertPrinted(SortedDraws.worstShareMean(celery, third), "27.0");
        assertPrinted(SortedDraws.worstShareMean(cucumber, third), "173.0");
        assertPrinted(SortedDraws.worstShareMean(pepper, third), "192.0");
        double[][] all = {carrot, celery, cucumber, pepper};
        for (int i = 0; i < all.length; i++) {
            for (int j = 0; j < all.length; j++) {
                assertThat(Dominance.first(all[i], all[j])).isEqualTo(Dominance.NONE);
                boolean ahead = (i == 2 && j == 0) || (i == 3 && j == 1);
                assertThat(Dominance.second(all[i], all[j]) == Dominance.A).isEqualTo(ahead);
            }
        }
    }

    @Test
    @DisplayName("Doubling every draw turns a paired sample into a stepped one and changes no verdict")
    void pairedAndSteppedAgree() {
        SplittableRandom random = new SplittableRandom(7);
        for (int round = 0; round < 400; round++) {
            double[] a = random.doubles(4, 0, 10).map(Math::rint).sorted().toArray();
            double[] b = random.doubles(4, 0, 9).map(Math::rint).sorted().toArray();
            double[] twice = new double[8];
            Arrays.setAll(twice, i -> a[i / 2]);
            assertThat(Dominance.first(twice, b)).isEqualTo(Dominance.first(a, b));
            assertThat(Dominance.second(twice, b)).isEqualTo(Dominance.second(a, b));
            if (Dominance.first(a, b) != Dominance.NONE) {
                assertThat(Dominance.second(a, b)).isEqualTo(Dominance.first(a, b));
            }
        }
    }

    private static double[] sorted(String row) {
        double[] values = numbers(row);
        Arrays.sort(values);
        return values;
    }
}
