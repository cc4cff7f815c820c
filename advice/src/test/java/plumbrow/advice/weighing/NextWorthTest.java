package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbrow.science.chance.StandardNormal;

/**
 * Worth of telling against closed forms. Source: Raiffa &amp; Schlaifer 1961, linear loss and a normal prior (values from memory; the
 * formula is worked here): two programs whose difference is normal of mean d and standard deviation s, of which an answer takes away
 * the share r, are worth √r·s·[φ(u) − u·(1 − Φ(u))], u = |d| / (√r·s).
 */
class NextWorthTest {
    private static final int DRAWS = 10_000;

    private static int[] shuffledRanks() {
        int[] ranks = new int[DRAWS];
        long state = 42;
        for (int i = 0; i < DRAWS; i++) {
            ranks[i] = i;
        }
        for (int i = DRAWS - 1; i > 0; i--) {
            state = state * 6364136223846793005L + 1442695040888963407L;
            int other = (int) Long.remainderUnsigned(state >>> 17, i + 1);
            int held = ranks[i];
            ranks[i] = ranks[other];
            ranks[other] = held;
        }
        return ranks;
    }

    /** 0 against d + s·z. */
    private static double[][] margins(int[] ranks, double d, double s) {
        double[] scores = StandardNormal.strata(DRAWS);
        double[][] margins = new double[2][DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            margins[1][i] = d + s * scores[ranks[i]];
        }
        return margins;
    }

    private static double closed(double d, double s) {
        double u = Math.abs(d) / s;
        double density = Math.exp(-u * u / 2) / Math.sqrt(2 * Math.PI);
        return s * (density - u * StandardNormal.below(-u));
    }

    @Test
    void aNumberThatTakesAwayAShareOfTheDoubt() {
        int[] ranks = shuffledRanks();
        for (double d : new double[] {0, 4, -10, 25}) {
            for (double share : new double[] {1, 0.5, 0.15}) {
                assertThat(NextWorth.ofSignal(margins(ranks, d, 20), ranks, share))
                        .as("d " + d + ", share " + share)
                        .isCloseTo(closed(d, 20 * Math.sqrt(share)), within(0.06));
            }
        }
    }

    /** What the margins don't hang on is worth nothing, however much they vary: no chance difference is taken for worth. */
    @Test
    void whatDecidesNothingIsWorthNothing() {
        int[] ranks = shuffledRanks();
        int[] other = new int[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            other[i] = ranks[(i * 7 + 3) % DRAWS];
        }
        double[][] margins = margins(ranks, 0.5, 40);
        assertThat(NextWorth.ofSignal(margins, other, 1)).isLessThan(NextInputs.LEAST_USD_PER_ACRE);
    }

    /** Yes or no, 30 % yes: −10 if yes, +6 if no, against 0. Right in 85 of 100: by Bayes' rule, worked below. */
    @Test
    void aYesOrNoThatMayBeWrong() {
        double[] works = new double[DRAWS];
        double[][] margins = new double[2][DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            works[i] = i / 2 % 10 < 3 ? 1 : 0;
            margins[1][i] = works[i] > 0 ? -10 : 6;
        }
        // Prior mean 0.3·−10 + 0.7·6 = 1.2: taken. Answer yes: 0.3·0.85·−10 + 0.7·0.15·6 = −1.92, left alone; so worth
        // 1.92.
        assertThat(NextWorth.ofAnswer(margins, works, 0.85)).isCloseTo(1.92, within(1e-9));
        assertThat(NextWorth.ofAnswer(margins, works, 1)).isCloseTo(3.0, within(1e-9));
        assertThat(NextWorth.ofAnswer(margins, works, 0.5)).isCloseTo(0, within(1e-9));
    }

    /** A price that is 25 % uncertain, $40/ac of it in one program that leads by $5: normal of mean 5 and SD 10. */
    @Test
    void aPriceThatIsOnlyTypical() {
        assertThat(NextWorth.ofPrice(new double[] {105, 100}, new double[] {40, 0}))
                .isCloseTo(closed(5, 10), within(0.05));
    }
}
