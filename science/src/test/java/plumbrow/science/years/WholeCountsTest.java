package plumbrow.science.years;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.years.Stands.HECTARE;

import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.weeds.HerbicideSelection;

@DisplayName("Fields are finite")
class WholeCountsTest {
    private static final int FIELDS = 400;

    @Test
    @DisplayName("7.3 F: a seed that resists both is there in 1 − e^−n of fields")
    void present() {
        double expected = 1e8 * 2e-6 * 2e-6 * 1000; // a thousand times 4.0e-4, so that few draws tell
        SplittableRandom random = Stands.random();
        int there = 0;
        double sum = 0;
        for (int i = 0; i < 20_000; i++) {
            double count = WholeCounts.perM2(expected, 1, random);
            assertThat(count).isEqualTo(Math.rint(count));
            there += count > 0 ? 1 : 0;
            sum += count;
        }
        double chance = HerbicideSelection.chancePresent(expected);
        assertThat(there / 20_000.0).isCloseTo(chance, within(4 * Math.sqrt(chance * (1 - chance) / 20_000)));
        assertThat(sum / 20_000).isCloseTo(expected, within(4 * Math.sqrt(expected / 20_000)));
    }

    @Test
    @DisplayName("Many are taken as expected, and an endless field holds every fraction")
    void many() {
        assertThat(WholeCounts.perM2(.01, HECTARE, Stands.random())).isEqualTo(.01);
        assertThat(WholeCounts.perM2(1e-30, Stands.ENDLESS, Stands.random())).isEqualTo(1e-30);
    }

    @Test
    @DisplayName("Diggle et al. 2003: on 100 ha double resistance is uncommon within 50 years of mixtures and almost"
            + " always there under rotation")
    void mixtureAgainstRotation() {
        assertThat(doubleResistant("mixture")).isLessThan(.3);
        assertThat(doubleResistant("rotation")).isGreaterThan(.9);
    }

    /** Share of fields of 100 ha on which a year within 50 ends with double resistant seed in more than a fifth. */
    private static double doubleResistant(String use) {
        int fields = 0;
        for (int i = 0; i < FIELDS; i++) {
            SplittableRandom random = new SplittableRandom(i);
            WeedBank bank = Diggle.bank(100 * HECTARE);
            bank.start(100, random);
            double most = 0;
            for (int year = 0; year < 50; year++) {
                bank.year(Diggle.response(use, year), 0, random);
                most = Math.max(most, bank.resistantToAllShare());
            }
            fields += most > .2 ? 1 : 0;
        }
        return (double) fields / FIELDS;
    }
}
