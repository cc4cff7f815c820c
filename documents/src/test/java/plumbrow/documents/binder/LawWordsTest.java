package plumbrow.documents.binder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbrow.advice.outlook.Law;

class LawWordsTest {
    @Test
    void eachLawHasWords() {
        assertThat(LawWords.of(new Law.Fixed(2))).isEqualTo("taken as 2");
        assertThat(LawWords.of(new Law.Pert(0.1, 0.6, 2.2))).isEqualTo("0.1 to 2.2, likely 0.6 (smooth peak)");
        assertThat(LawWords.of(new Law.Triangular(1, 2, 3))).isEqualTo("1 to 3, likely 2 (straight sides)");
        assertThat(LawWords.of(new Law.Normal(10, 0.2))).isEqualTo("about 10, ± 20 % (bell-shaped)");
        assertThat(LawWords.of(new Law.Weibull(192, 0.14))).isEqualTo("about 192, ± 14 % (yield-like)");
        assertThat(LawWords.of(new Law.Lognormal(4.2, 0.22, 0.6)))
                .isEqualTo("4.2 today, moving 22 % a year for 0.6 years");
        assertThat(LawWords.of(new Law.Past(List.of(170.0, 182.5)))).isEqualTo("as in the past: 170; 182.5");
        assertThat(LawWords.of(new Law.Chance(0.3))).isEqualTo("yes with a chance of 30 %");
    }

    @Test
    void noLawIsForgotten() {
        assertThat(Law.class.getPermittedSubclasses()).hasSize(8);
    }
}
