package plumbrow.documents.binder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Distribution;

class DistributionWordsTest {
    @Test
    void eachDistributionHasWords() {
        assertThat(DistributionWords.of(new Distribution.Fixed(2))).isEqualTo("taken as 2");
        assertThat(DistributionWords.of(new Distribution.Pert(0.1, 0.6, 2.2)))
                .isEqualTo("0.1 to 2.2, likely 0.6 (smooth peak)");
        assertThat(DistributionWords.of(new Distribution.Triangular(1, 2, 3)))
                .isEqualTo("1 to 3, likely 2 (straight sides)");
        assertThat(DistributionWords.of(new Distribution.Normal(10, 0.2))).isEqualTo("about 10, ± 20 % (bell-shaped)");
        assertThat(DistributionWords.of(new Distribution.Weibull(192, 0.14)))
                .isEqualTo("about 192, ± 14 % (yield-like)");
        assertThat(DistributionWords.of(new Distribution.Lognormal(4.2, 0.22, 0.6)))
                .isEqualTo("4.2 today, moving 22 % a year for 0.6 years");
        assertThat(DistributionWords.of(new Distribution.Past(List.of(170.0, 182.5))))
                .isEqualTo("as in the past: 170; 182.5");
        assertThat(DistributionWords.of(new Distribution.Even(0, 40))).isEqualTo("0 to 40, all as likely");
        // e^(1.2816·0.8) = 2.788, the factor of eight in ten.
        assertThat(DistributionWords.of(new Distribution.Factor(3, 0.8)))
                .isEqualTo("about 3, in 8 of 10 cases within 2.8 times less or more");
        // 0.85 has log-odds 1.7346; ± 1.2816·0.95 gives 0.627 and 0.950.
        assertThat(DistributionWords.of(new Distribution.LogOdds(0.85, 0.95)))
                .isEqualTo("about 0.85, in 8 of 10 cases 0.63 to 0.95");
        assertThat(DistributionWords.of(new Distribution.Chance(0.3))).isEqualTo("yes with a chance of 30 %");
    }

    @Test
    void noDistributionIsForgotten() {
        assertThat(Distribution.class.getPermittedSubclasses()).hasSize(11);
    }
}
