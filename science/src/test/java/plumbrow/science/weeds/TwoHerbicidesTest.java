package plumbrow.science.weeds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.figure.Answer;

@DisplayName("Two herbicides, against values from outside")
class TwoHerbicidesTest {

    @Test
    @DisplayName(
            "E rotation: .171 and .653 after years 7 and 9, .653 for the second after 10, bank above 10,000 (published: crossing about year 10)")
    void rotation() {
        Answer answer = ask("rotation", "14");
        double[] first = answer.list("first_shares");
        assertThat(first[6]).isCloseTo(.171, within(.001));
        assertThat(first[8]).isCloseTo(.653, within(.001));
        assertThat(answer.list("second_shares")[9]).isCloseTo(.653, within(.001));
        double bank = answer.list("bank_m2")[13];
        assertThat(bank).isBetween(2.7e4, 3.1e4);
    }

    @Test
    @DisplayName(
            "F an endless mixture gains one year at the most over one herbicide alone, a rotation doubles the years")
    void trap() {
        assertThat(ask("first-alone", "14").word("half_first")).isEqualTo("5");
        assertThat(ask("mixture", "14").word("half_first")).isEqualTo("6");
        assertThat(ask("rotation", "14").word("half_first")).isEqualTo("9");
    }

    @Test
    @DisplayName("What is never sprayed on never selects; shares never fall while sprayed")
    void selection() {
        Answer alone = ask("first-alone", "20");
        for (double share : alone.list("second_shares")) {
            assertThat(share).isCloseTo(2e-6, within(1e-8));
        }
        double[] shares = ask("mixture", "20").list("first_shares");
        for (int year = 1; year < shares.length; year++) {
            assertThat(shares[year]).isGreaterThanOrEqualTo(shares[year - 1] - 1e-12);
        }
    }

    @Test
    @DisplayName("A year makes no seed out of nothing, and genotypes sum to the bank")
    void balance() {
        double[][] bank = {{90, 9, 1}, {4, 2, 1}, {1, 1, 1}};
        double[][] next = TwoHerbicides.next(bank, true, true, 1, 1, .2);
        double sum = 0;
        for (double[] row : next) {
            for (double seeds : row) {
                assertThat(seeds).isNotNegative();
                sum += seeds;
            }
        }
        // Only the four genotypes with both genes live: 5 of 110 seeds, all germinate, a fifth establish after the
        // winter.
        double plants = 5 * .9 * .2;
        assertThat(sum).isCloseTo(plants * 1200 / (1 + .04 * plants + 11.7), within(1e-9));
    }

    private static Answer ask(String use, String years) {
        return TwoHerbicides.FIGURE.answer(Map.of("use", use, "initial_frequency", "0.000001", "years", years));
    }
}
