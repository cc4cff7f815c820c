package plumbrow.advice.assumptions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RankTieTest {
    private static final int DRAWS = 20_000;
    private static final Distribution PRICE = new Distribution.Lognormal(4.50, 0.25, 0.5);

    @ParameterizedTest
    @ValueSource(doubles = {-0.9, -0.5, -0.3, 0, 0.3, 0.8})
    @DisplayName("the rank correlation is the one asked for, the values are the same to the bit")
    void correlation(double wanted) {
        DrawSource source = new DrawSource(DRAWS, 11);
        Column price = source.column("price", PRICE);
        Distribution distribution = new Distribution.Weibull(180, 0.2);
        Column free = source.column("yield", distribution);
        Column tied = source.tied("yield", distribution, price, wanted);
        assertThat(spearman(price, tied)).isCloseTo(wanted, within(0.02));
        double[] before = free.values().clone();
        double[] after = tied.values().clone();
        Arrays.sort(before);
        Arrays.sort(after);
        assertThat(after).isEqualTo(before);
    }

    @Test
    @DisplayName("E[P·Y] of two lognormals tied at −.30 is 801.18, free 810.00 (reference 2.4, computed)")
    void revenue() {
        // A lognormal yield of mean 180 and CV .20 is a lognormal with volatility .19804 over one year.
        Distribution distribution = new Distribution.Lognormal(180, Math.sqrt(Math.log1p(0.04)), 1);
        double sum = 0;
        double free = 0;
        int seeds = 20;
        for (int seed = 0; seed < seeds; seed++) {
            DrawSource source = new DrawSource(DRAWS, seed);
            Column price = source.column("price", PRICE);
            sum += meanProduct(price, source.tied("yield", distribution, price, -0.3));
            free += meanProduct(price, source.column("yield", distribution));
        }
        assertThat(sum / seeds).isCloseTo(801.18, within(0.25));
        assertThat(free / seeds).isCloseTo(810.00, within(0.25));
    }

    private static double meanProduct(Column a, Column b) {
        double sum = 0;
        for (int i = 0; i < DRAWS; i++) {
            sum += a.values()[i] * b.values()[i];
        }
        return sum / DRAWS;
    }

    private static double spearman(Column a, Column b) {
        double sum = 0;
        double mean = (DRAWS - 1) / 2.0;
        for (int i = 0; i < DRAWS; i++) {
            sum += (a.ranks()[i] - mean) * (b.ranks()[i] - mean);
        }
        return sum / (DRAWS * ((double) DRAWS * DRAWS - 1) / 12);
    }
}
