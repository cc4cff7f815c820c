package plumbrow.science.weeds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;
import static plumbrow.science.Printed.numbers;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Weeds through the season and the years, against values from outside")
class WeedSeasonTest {

    @Test
    @DisplayName("2a the weedy curve goes to 44.4444; 2b 95 % at 327.415; 2d the weed-free curve reaches it at 284.631")
    void criticalCurves() {
        assertPrinted(CriticalCurves.weedyUntil(1e6, .01, 500, 1.8), "44.4444");
        assertPrinted(CriticalCurves.removeBy(95, .01, 500, 1.8), "327.415");
        assertPrinted(CriticalCurves.cleanFor(95, 100, .5, .008), "284.631");
        assertThat(CriticalCurves.removeBy(40, .01, 500, 1.8)).isInfinite();
        assertThat(CriticalCurves.cleanFor(95, 94, .5, .008)).isInfinite();
        assertThat(CriticalCurves.cleanFor(50, 100, .5, .008)).isZero();
    }

    @Test
    @DisplayName("2 a curve given the numbers of the other is refused by name")
    void numbersOfTheOtherCurve() {
        assertThatThrownBy(() -> CriticalPeriod.FIGURE.answer(
                        Map.of("model", "logistic", "t", "100", "c", ".01", "d", "500", "f", "1.8", "k", ".1")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageStartingWith("k is '.1'");
        assertThatThrownBy(() ->
                        CriticalPeriod.FIGURE.answer(Map.of("model", "gompertz", "t", "100", "a", "100", "b", ".5")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("k is missing");
        assertThatThrownBy(() -> WeedEmergence.FIGURE.answer(Map.of("gdd", "100", "form", "weibull", "shape", "2")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("either scale or e50");
    }

    @ParameterizedTest(name = "{0}: half at {1}")
    @CsvSource({
        "Pennsylvania smartweed, 80, 96.1, 31, 146",
        "kochia, 155, 186.2, 60, 283",
        "wild buckwheat, 172, 206.6, 67, 313",
        "Russian thistle, 195, 234.2, 76, 355",
        "common lambsquarters, 200, 240.2, 78, 365",
        "velvetleaf, 250, 300.3, 97, 456",
        "giant foxtail, 265, 318.3, 103, 483",
        "tansymustard, 270, 324.3, 105, 492",
        "green foxtail, 340, 408.4, 133, 620",
        "prickly sida, 510, 612.6, 199, 930",
        "wild-proso millet, 535, 642.6, 209, 975",
        "pigweeds, 639, 767.5, 249, 1165",
        "tall morningglory, 725, 870.8, 283, 1321"
    })
    @DisplayName(
            "3.1 scale, tenth and nine tenths with shape 2 from the half emergence of Forcella et al. 1997 (computed)")
    void emergenceTable(String weed, double half, String scale, String tenth, String nineTenths) {
        double lambda = WeedEmergence.scaleOfHalf(half, 2);
        assertPrinted(lambda, scale);
        assertPrinted(WeedEmergence.weibullDegreeDays(10, lambda, 2), tenth);
        assertPrinted(WeedEmergence.weibullDegreeDays(90, lambda, 2), nineTenths);
    }

    @Test
    @DisplayName("3c scale 492.749 from lrc −12.4, pwr 2; 3d b 8.44426 from half at 250, k .01 (computed)")
    void emergenceForms() {
        assertPrinted(Math.exp(12.4 / 2), "492.749");
        assertPrinted(WeedEmergence.gompertzB(250, .01), "8.44426");
    }

    @Test
    @DisplayName("3.2 the two waterhemp fits to Schutte & Davis 2014 (derived)")
    void waterhempFits() {
        double[] at = {100, 300, 600, 900, 1200};
        String[] weibull = {"1.5", "20.7", "72.7", "97.2", "99.9"};
        String[] gompertz = {"0.8", "20.0", "73.8", "94.4", "98.9"};
        for (int i = 0; i < at.length; i++) {
            assertPrinted(WeedEmergence.weibullPct(at[i], 540, 2.49), weibull[i]);
            assertPrinted(WeedEmergence.gompertzPct(at[i], 8.5, .00555), gompertz[i]);
        }
    }

    @Test
    @DisplayName("4.1 half the rate controls exactly one DT50 shorter; log-odds fall along a line")
    void residualConsequences() {
        double full = ResidualHerbicide.daysAbove(80, 1400, 0, 20, 200, 3);
        assertThat(ResidualHerbicide.daysAbove(80, 700, 0, 20, 200, 3)).isCloseTo(full - 20, within(1e-9));
        assertThat(ResidualHerbicide.controlPct(ResidualHerbicide.left(1400, 0, 20, full), 200, 3))
                .isCloseTo(80, within(1e-9));
        assertThat(ResidualHerbicide.daysAbove(80, 100, 0, 20, 200, 3)).isZero();
        double early = ResidualHerbicide.controlPct(ResidualHerbicide.left(1400, 0, 20, 10), 200, 3);
        double late = ResidualHerbicide.controlPct(ResidualHerbicide.left(1400, 0, 20, 45), 200, 3);
        assertThat(ResidualHerbicide.logOddsPerDay(early, late, 35)).isCloseTo(3 * Math.log(2) / 20, within(1e-9));
    }

    @Test
    @DisplayName("6f, 6g, 6h six years of seedbank (computed)")
    void sixYears() {
        double[] none = numbers("627.0 393.13 246.49 154.55 96.90 60.76");
        double[] ninety = numbers("56182.56 133822.52 183312.47 214502.40 234121.43 246453.60");
        double[] thousandth = numbers("1861.57 3441.25 6281.82 11219.28 19333.73 31585.66");
        double a = 1000;
        double b = 1000;
        double c = 1000;
        for (int year = 0; year < 6; year++) {
            a = Seedbank.next(a, .05, 0, 50_000, .34, .5);
            b = Seedbank.next(b, .05, .05, 50_000, .34, .5);
            c = Seedbank.next(c, .05, .0005, 50_000, .34, .5);
            assertThat(a).isCloseTo(none[year], within(.01));
            assertThat(b).isCloseTo(ninety[year], within(.01));
            assertThat(c).isCloseTo(thousandth[year], within(.01));
        }
    }

    @Test
    @DisplayName("6c waterhemp with no seed return, from 83 %: published 52, 32, 21, 11 (Buhler & Hartzler 2001)")
    void noSeedReturn() {
        String[] computed = {"52.04", "32.63", "20.46", "12.83"};
        double[] published = {52, 32, 21, 11};
        double left = 83;
        for (int year = 0; year < 4; year++) {
            left = Seedbank.next(left, .05, 0, 0, .34, 0);
            assertPrinted(left, computed[year]);
            assertThat(left).isCloseTo(published[year], within(2.0));
        }
    }

    @ParameterizedTest(name = "corn, soybean, {0} rye, {1} alfalfa: published {2} %")
    @CsvSource({"0, 0, 99.0, 99.13", "1, 0, 97.9, 98.08", "1, 1, 95.6, 95.93"})
    @DisplayName("6b giant ragweed, least control that holds the bank (Liebman & Nichols 2020), within .4 points")
    void giantRagweedRotations(int rye, int alfalfa, double published, String computed) {
        double bank = Math.pow(.75, 4);
        DoubleUnaryOperator growth = control -> {
            double times = Seedbank.growth(.18, bank, 1 - control, 985, .4)
                    * Seedbank.growth(.18, bank, 1 - control, 1400, .4);
            times *= Math.pow(Seedbank.growth(.18, bank, .1, 3, .4), rye);
            return times * Math.pow(Seedbank.growth(.18, bank, 0, 0, .4), alfalfa);
        };
        double low = 0;
        double high = 1;
        while (high - low > 1e-12) {
            double middle = (low + high) / 2;
            if (growth.applyAsDouble(middle) > 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(100 * high).isCloseTo(published, within(.4));
        assertPrinted(100 * high, computed);
    }

    @ParameterizedTest(name = "start {0}")
    @CsvSource({
        "1e-6, 11.11, 5.09, 9.74, 6.81, 2.64, 3.75, 5.09, 15.05",
        "1e-8, 15.30, 7.01, 13.42, 9.38, 3.64, 5.16, 7.01, 20.73",
        "1e-10, 19.49, 8.93, 17.10, 11.95, 4.64, 6.57, 8.93, 26.41"
    })
    @DisplayName("7.3 A years to 20 %, Gressel & Segel's model (computed)")
    void slowSeed(double start, String a, String b, String c, String d, String e, String f, String g, String h) {
        String[] years = {a, b, c, d, e, f, g, h};
        double[] control = {.5, .9, .9, .95, .99, .99, .99, .9};
        double[] life = {1, 1, 4, 4, 1, 4, 10, 4};
        for (int i = 0; i < years.length; i++) {
            assertPrinted(
                    HerbicideSelection.yearsTo(.2, start, 1 / (1 - control[i]), life[i], i == 7 ? .5 : 1), years[i]);
        }
    }

    @ParameterizedTest(name = "{0}, {1} %, d {2}: year {3}, share {4}")
    @CsvSource({
        "1e-6, 95, 0, 5, .7619",
        "1e-6, 95, .627, 7, .4044",
        "1e-6, 95, .8, 9, .2625",
        "1e-6, 99, .627, 4, .3409",
        "1e-8, 95, .627, 9, .3573",
        "1e-6, 80, .627, 14, .2144",
        "1e-6, 90, 0, 6, .5000"
    })
    @DisplayName("7.3 B first year above 20 % and the share then (computed)")
    void shares(String start, String control, String dormant, int year, String share) {
        Answer answer = ResistanceYears.FIGURE.answer(
                Map.of("initial_share", start, "control_pct", control, "dormant_share", dormant));
        assertThat(answer.number("first_year_above_20pct")).isEqualTo(year);
        assertPrinted(answer.list("shares")[year - 1], share);
    }

    @Test
    @DisplayName("7.3 B germination alone gives the dormant share; a short look ahead says so in words")
    void shareInputs() {
        Answer byGermination = ResistanceYears.FIGURE.answer(
                Map.of("initial_share", "1e-6", "control_pct", "95", "germination", ".373", "years", "10"));
        assertPrinted(byGermination.list("shares")[6], ".4044");
        Answer brief =
                ResistanceYears.FIGURE.answer(Map.of("initial_share", "1e-6", "control_pct", "50", "years", "3"));
        assertThat(brief.word("first_year_above_20pct")).isEqualTo("not within 3");
        assertThat(brief.list("shares")).hasSize(3);
    }

    @ParameterizedTest(name = "h {0}, from {1}: year {2}")
    @CsvSource({"1, 1e-6, 4", "0.5, 1e-6, 6", "0, 1e-6, 52645", "0, 1e-3, 59"})
    @DisplayName("7.3 C years to more than 20 % resistant plants, random mating (computed)")
    void diploid(double dominance, double start, int expected) {
        double q = start;
        int year = 0;
        double plants = 0;
        while (plants <= .2) {
            q = HerbicideSelection.nextFrequency(q, .05, dominance, 0);
            plants = dominance == 0 ? q * q : 1 - (1 - q) * (1 - q);
            year++;
        }
        assertThat(year).isEqualTo(expected);
    }

    @Test
    @DisplayName("7.3 F without finite fields a mixture gives no delay over one herbicide: 5 years both; rotation 9")
    void mixtureTrap() {
        double single = 1e-6;
        double mixture = 1e-12;
        for (int year = 0; year < 5; year++) {
            assertThat(single).isLessThan(.2);
            assertThat(mixture).isLessThan(.2);
            single = HerbicideSelection.nextShare(single, .05, 0);
            mixture = HerbicideSelection.nextShare(mixture, .05 * .05, 0);
        }
        assertThat(single).isGreaterThan(.2);
        assertThat(mixture).isGreaterThan(.2);
        double expected = HerbicideSelection.expectedDouble(100 * 100 * 1e4, 2e-6, 2e-6);
        assertThat(expected).isCloseTo(4.0e-4, within(1e-10));
        assertPrinted(100 * HerbicideSelection.chancePresent(expected), ".0400");
        assertThat(HerbicideSelection.chancePresent(1e8 * 2e-6)).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "corn-many, 2.0, 5:1 7:2.5 11:5 17:10 25:25 59:50", "corn-few, 0.5, 14:1 20:2.5 27:5 44:10",
        "soybean-many, 0.4, 8:2.5 10:5 14:10 23:25", "soybean-few, 0.2, 24:2.5 30:5 37:10 53:25"
    })
    @DisplayName("2 the smooth curves stay near the published table of Soltani et al. 2022")
    void postDelayTable(String field, double slack, String table) {
        for (String cell : table.split(" ", -1)) {
            String[] pair = cell.split(":", -1);
            assertThat(PostDelay.lossPct(field, Double.parseDouble(pair[0])))
                    .as(cell)
                    .isCloseTo(Double.parseDouble(pair[1]), within(slack + .05));
        }
    }

    @ParameterizedTest(name = "{0} g/ha: {1} %")
    @CsvSource({"12.7, 15.00", "25.5, 55.89", "51, 90.00", "102, 98.46"})
    @DisplayName("8 clethodim on volunteer corn, from 12.7 g/ha 15 % and 51 g/ha 90 % (Alms 2016)")
    void clethodim(double rate, String control) {
        assertPrinted(ResidualHerbicide.controlPct(rate, 23.4513, 2.8282), control);
    }
}
