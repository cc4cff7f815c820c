package plumbrow.science.years;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static plumbrow.science.years.Stands.ENDLESS;
import static plumbrow.science.years.Stands.bank;
import static plumbrow.science.years.Stands.one;
import static plumbrow.science.years.Stands.plain;
import static plumbrow.science.years.Stands.random;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.weeds.HerbicideSelection;
import plumbrow.science.weeds.Seedbank;
import plumbrow.science.weeds.TwoHerbicides;

@DisplayName("Weed seed over the years, against values from outside")
class WeedBankTest {
    private static final double SHOWS = .2;

    @Test
    @DisplayName("6f: no seed return, six years: 627.0, 393.13, 246.49, 154.55, 96.90, 60.76 of 1000")
    void noSeedReturn() {
        WeedBank bank = bank(new WeedLife(.05, .34, 1, 0));
        bank.start(1000, random());
        for (double seeds : new double[] {627.0, 393.13, 246.49, 154.55, 96.90, 60.76}) {
            bank.year(plain(0, 50_000, .5), 0, random());
            assertThat(bank.seedsM2()).isCloseTo(seeds, within(.005));
        }
    }

    @Test
    @DisplayName(
            "6c: waterhemp without new seed, published 52, 32, 21 % of 83 % (Buhler & Hartzler 2001), within 1.1 points")
    void waterhempDeclines() {
        WeedBank bank = bank(new WeedLife(.05, .34, 1, 0));
        bank.start(83, random());
        for (double published : new double[] {52, 32, 21}) {
            bank.year(plain(0, 0, 0), 0, random());
            assertThat(bank.seedsM2()).isCloseTo(published, within(1.1));
        }
    }

    @Test
    @DisplayName("6g and 6h: waterhemp at 90 and at 99.9 % control for six years")
    void waterhempGrows() {
        WeedLife life = new WeedLife(.05, .34, 1, 0);
        WeedBank poor = bank(life);
        WeedBank good = bank(life);
        poor.start(1000, random());
        good.start(1000, random());
        double[] ninety = {56_182.56, 133_822.52, 183_312.47, 214_502.40, 234_121.43, 246_453.60};
        double[] nearly = {1861.57, 3441.25, 6281.82, 11_219.28, 19_333.73, 31_585.66};
        for (int year = 0; year < 6; year++) {
            poor.year(plain(.05, 50_000, .5), 0, random());
            good.year(plain(.0005, 50_000, .5), 0, random());
            assertThat(poor.seedsM2()).isCloseTo(ninety[year], within(.005));
            assertThat(good.seedsM2()).isCloseTo(nearly[year], within(.005));
        }
    }

    @Test
    @DisplayName("6a: giant foxtail over corn, soybean and wheat grows 1.57-fold (Davis, Dixon & Liebman 2004)")
    void foxtailRotation() {
        double[][] crops = {{.38, .4752, 1150, .01408}, {.54, .4752, 459, .3168}, {.54, .4644, 111, 3.956e-7}};
        double seeds = 1;
        for (double[] crop : crops) {
            WeedBank bank = bank(new WeedLife(crop[0], 1 - crop[1], crop[3], 1));
            bank.start(seeds, random());
            bank.year(plain(.1, crop[2], 0), 0, random());
            seeds = bank.seedsM2();
        }
        assertThat(seeds).isCloseTo(1.57, within(.005));
    }

    /** Control and dormant share as in 7.3 B: seed return is set each year so that the bank stays as large as it is. */
    @ParameterizedTest(name = "{0} resistant, control {1}, dormant {2}: above 20 % in year {3}, then {4}")
    @CsvSource({
        "1e-6, .95, 0, 5, .7619",
        "1e-6, .95, .627, 7, .4044",
        "1e-6, .95, .8, 9, .2625",
        "1e-6, .99, .627, 4, .3409",
        "1e-8, .95, .627, 9, .3573",
        "1e-6, .80, .627, 14, .2144",
        "1e-6, .90, 0, 6, .5000"
    })
    @DisplayName("7a to 7g: shares of a seedbank year by year, each year equal to r' of the reference")
    void shares(double start, double control, double dormant, int year, double share) {
        double left = 1 - control;
        double up = 1 - dormant;
        WeedBank bank = bank(new WeedLife(up, 0, 1, 1), ResistanceGene.dominant(start));
        bank.start(1000, random());
        double expected = start;
        for (int y = 1; y <= year; y++) {
            assertThat(bank.resistantShare(0)).isLessThan(SHOWS);
            double stand = expected + (1 - expected) * left;
            bank.year(one(left, 1 / stand, 0), 0, random());
            expected = HerbicideSelection.nextShare(expected, left, dormant);
            assertThat(bank.seedsM2()).isCloseTo(1000, within(1e-9));
            assertThat(bank.resistantShare(0)).isCloseTo(expected, withPercentage(1e-9));
        }
        assertThat(bank.resistantShare(0)).isGreaterThan(SHOWS).isCloseTo(share, within(5e-5));
    }

    @ParameterizedTest(name = "dominance {0} from {1}: {2} years to 20 %")
    @CsvSource({"1, 1e-6, 4", "0.5, 1e-6, 6", "0, 1e-3, 59"})
    @DisplayName("7.3 C: one gene, crossing at random, no dormancy; each year equal to q' of the reference")
    void alleles(double dominance, double start, int years) {
        double left = .05;
        ResistanceGene gene =
                new ResistanceGene(start, Expression.fold(1 - left, dominance), Double.POSITIVE_INFINITY, 0, 0, 0, 0);
        WeedBank bank = bank(new WeedLife(1, 0, 1, 0), gene);
        bank.start(1000, random());
        double q = start;
        int year = 0;
        while ((dominance == 0 ? q * q : 1 - (1 - q) * (1 - q)) <= SHOWS) {
            bank.year(one(left, 1, 0), 0, random());
            q = HerbicideSelection.nextFrequency(q, left, dominance, 0);
            assertThat(bank.frequency(0)).isCloseTo(q, withPercentage(1e-8));
            year++;
        }
        assertThat(year).isEqualTo(years);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"rotation", "mixture", "first-alone"})
    @DisplayName("7.3 E: two herbicides, each year equal to the reference model of Diggle, Neve & Smith 2003")
    void twoHerbicides(String use) {
        var outputs = TwoHerbicides.FIGURE
                .answer(Map.of("use", use, "initial_frequency", "0.000001", "years", "14"))
                .outputs();
        double[] seeds = listed(Objects.requireNonNull(outputs.get("bank_m2")));
        double[] first = listed(Objects.requireNonNull(outputs.get("first_shares")));
        double[] second = listed(Objects.requireNonNull(outputs.get("second_shares")));
        WeedBank bank = Diggle.bank(ENDLESS);
        bank.start(100, random());
        for (int year = 0; year < seeds.length; year++) {
            bank.year(Diggle.response(use, year), 0, random());
            assertThat(bank.seedsM2()).isCloseTo(seeds[year], withPercentage(1e-9));
            assertThat(bank.resistantShare(0)).isCloseTo(first[year], withPercentage(1e-6));
            assertThat(bank.resistantShare(1)).isCloseTo(second[year], withPercentage(1e-6));
        }
    }

    private static double[] listed(@Nullable Object numbers) {
        return ((List<?>) Objects.requireNonNull(numbers))
                .stream().mapToDouble(number -> ((Number) number).doubleValue()).toArray();
    }

    @Test
    @DisplayName("Seed and plants balance every year")
    void balance() {
        WeedLife life = new WeedLife(.2, .3, .1, .5, .25);
        WeedBank bank = new WeedBank(
                List.of(new ResistanceGene(.01, 50, 500, .1, .5, 1e-6, .1)), life, new Inflow(.05, 2), ENDLESS);
        bank.start(500, random());
        for (int year = 0; year < 20; year++) {
            double before = bank.seedsM2();
            bank.year(one(.03, 300, .1), 0, random());
            double gained = life.seedKept() * bank.shedM2() + 2;
            assertThat(bank.seedsM2()).isCloseTo(before - bank.upM2() - bank.diedM2() + gained, within(1e-7));
            assertThat(bank.plantsM2()).isBetween(.03 * bank.upM2(), bank.upM2());
            assertThat(bank.shedM2())
                    .isLessThanOrEqualTo(Seedbank.crowded(300 * bank.plantsM2(), bank.plantsM2(), .1) * (1 + 1e-12));
        }
    }

    @Test
    @DisplayName("Limits: no weeds stay none; nothing sprayed selects nothing; a cost alone wears resistance down")
    void limits() {
        WeedBank none = bank(new WeedLife(.2, .3, 1, 0), ResistanceGene.dominant(.1));
        none.start(0, random());
        none.year(one(.05, 100, 0), 0, random());
        assertThat(none.seedsM2()).isZero();
        assertThat(none.loadPct()).isZero();
        assertThat(none.resistantShare(0)).isZero();

        WeedBank unsprayed = bank(new WeedLife(.2, .3, 1, 0), ResistanceGene.dominant(.1));
        WeedBank costly = bank(new WeedLife(.2, .3, 1, 0), new ResistanceGene(.1, 100, 100, .3, 1, 0, 0));
        unsprayed.start(100, random());
        costly.start(100, random());
        for (int year = 0; year < 20; year++) {
            double before = costly.frequency(0);
            unsprayed.year(one(1, 10, .1), 0, random());
            costly.year(one(1, 10, .1), 0, random());
            assertThat(unsprayed.frequency(0)).isCloseTo(.1, within(1e-12));
            assertThat(costly.frequency(0)).isLessThan(before);
        }
    }

    @Test
    @DisplayName("More selection is never slower")
    void moreSelection() {
        double before = 0;
        for (double left = .9; left > .01; left *= .8) {
            WeedBank bank = bank(new WeedLife(.3, .2, 1, 0), ResistanceGene.dominant(1e-6));
            bank.start(1000, random());
            for (int year = 0; year < 6; year++) {
                bank.year(one(left, 100, .5), 0, random());
            }
            assertThat(bank.frequency(0)).isGreaterThanOrEqualTo(before);
            before = bank.frequency(0);
        }
        assertThat(before).isGreaterThan(.01);
    }

    @Test
    @DisplayName("Pollen from a resistant neighbourhood is never slower than none")
    void pollen() {
        double before = 0;
        for (double share : new double[] {0, .001, .01, .1}) {
            WeedBank bank = new WeedBank(
                    List.of(new ResistanceGene(1e-8, 300, 9e4, 0, 0, 0, .5)),
                    new WeedLife(.3, .2, 1, 0),
                    new Inflow(share, 0),
                    ENDLESS);
            bank.start(1000, random());
            bank.year(one(.05, 100, .5), 0, random());
            assertThat(bank.frequency(0)).isGreaterThan(before);
            before = bank.frequency(0);
        }
    }
}
