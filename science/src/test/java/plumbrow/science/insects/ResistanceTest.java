package plumbrow.science.insects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Resistance to traits, against values from outside")
class ResistanceTest {
    private static final int HORIZON = 5000;

    private static int generations(double p0, double r, double h, double ss, double rr) {
        return InsectResistance.generationsToHalf(
                p0,
                InsectResistance.fitness(r, 1, rr),
                InsectResistance.fitness(r, 1, InsectResistance.mixedSurvival(ss, rr, h)),
                InsectResistance.fitness(r, 1, ss),
                HORIZON);
    }

    private static double frequencyAfter(double p0, double r, double h, int steps) {
        double p = p0;
        for (int i = 0; i < steps; i++) {
            p = InsectResistance.next(p, 1, InsectResistance.fitness(r, 1, h), r);
        }
        return p;
    }

    @ParameterizedTest(name = "refuge {0} → {1}")
    @CsvSource({".05, .001018981", ".10, .001008991", ".20, .001003996", ".50, .001000999"})
    @DisplayName("7.1 one step from .001, recessive")
    void oneStep(double r, String after) {
        assertPrinted(InsectResistance.next(.001, 1, r, r), after);
    }

    @ParameterizedTest(name = "p0 {0}, refuge {1}, h {2}: {3} generations, then {4}")
    @CsvSource({
        ".001, .05, 0, 59, .853", ".001, .05, .05, 8, .584", ".001, .05, .5, 4, .652", ".001, .05, 1, 3, .523",
        ".001, .10, 0, 118, .736", ".001, .10, .05, 13, .515", ".001, .10, .5, 5, .606", ".001, .10, 1, 4, .560",
        ".001, .20, 0, 258, .688", ".001, .20, .05, 25, .587", ".001, .20, .5, 7, .535", ".001, .20, 1, 6, .614",
        ".001, .50, 0, 1012, .571", ".001, .50, .05, 87, .569", ".001, .50, .5, 18, .530", ".001, .50, 1, 12, .532",
        ".01, .05, 0, 9, .744", ".01, .05, .05, 5, .736", ".01, .05, .5, 3, .649", ".01, .05, 1, 3, .643",
        ".01, .10, 0, 15, .560", ".01, .10, .05, 8, .823", ".01, .10, .5, 4, .675", ".01, .10, 1, 3, .562",
        ".01, .20, 0, 30, .654", ".01, .20, .05, 13, .588", ".01, .20, .5, 5, .554", ".01, .20, 1, 4, .548"
    })
    @DisplayName("7.2 high dose, generations to half and the frequency there")
    void highDose(double p0, double r, double h, int steps, String frequency) {
        assertThat(generations(p0, r, h, 0, 1)).isEqualTo(steps);
        assertPrinted(frequencyAfter(p0, r, h, steps), frequency);
    }

    @ParameterizedTest(name = "refuge {0}, h {1}: {2}")
    @CsvSource({
        ".05, 0, 115", ".10, 0, 177", ".20, 0, 324", ".05, .25, 6", ".10, .25, 8", ".20, .25, 12",
        ".05, .5, 5", ".10, .5, 6", ".20, .5, 8", ".05, 1, 4", ".10, 1, 5", ".20, 1, 6"
    })
    @DisplayName("7.2 moderate dose, survival of susceptible .05, p0 .001")
    void moderateDose(double r, double h, int steps) {
        assertThat(generations(.001, r, h, .05, 1)).isEqualTo(steps);
    }

    @Test
    @DisplayName("7.2 survival of susceptible .01, h .3, p0 .01: refuge .20 → 6, .05 → 3")
    void nearlyHighDose() {
        assertThat(generations(.01, .20, .3, .01, 1)).isEqualTo(6);
        assertThat(generations(.01, .05, .3, .01, 1)).isEqualTo(3);
    }

    @ParameterizedTest(name = "refuge {0} → {1}")
    @CsvSource({".05, 53", ".10, 111", ".20, 250", ".50, 998"})
    @DisplayName("7.2 the short formula T ≈ r/(1−r)·(1/p0 − 1/p_T) stays a little below the exact count")
    void shortFormula(double r, String about) {
        double approximate = r / (1 - r) * (1 / .001 - 1 / .5);
        assertPrinted(approximate, about);
        // It leaves out the last steep steps, so it stays below the exact count.
        assertThat(approximate / generations(.001, r, 0, 0, 1)).isBetween(.88, 1.0);
    }

    @ParameterizedTest(name = "refuge {0}, moving {1}: W_SS {2}, {3} generations")
    @CsvSource({
        ".05, 0, .0595, 7", ".05, .1, .0544, 7", ".05, .3, .0442, 7", ".05, .5, .0341, 6",
        ".20, 0, .208, 18", ".20, .1, .193, 17", ".20, .3, .163, 15", ".20, .5, .133, 13"
    })
    @DisplayName("7.3 blend with moving larvae, survival .01/.10/1, dose share .5, p0 .001")
    void blend(double r, double moving, String fitnessSs, int steps) {
        assertPrinted(BlendResistance.fitness(r, .01, moving, .5), fitnessSs);
        assertThat(InsectResistance.generationsToHalf(
                        .001,
                        BlendResistance.fitness(r, 1, moving, .5),
                        BlendResistance.fitness(r, .10, moving, .5),
                        BlendResistance.fitness(r, .01, moving, .5),
                        HORIZON))
                .isEqualTo(steps);
    }

    @ParameterizedTest(name = "SS {0}, RS {1}: {2}/{3} and {4}/{5}")
    @CsvSource({
        ".01, .01, 459, 10, 2206, 31",
        ".05, .10, 38, 7, 163, 15",
        ".05, .30, 11, 4, 42, 8",
        ".20, .40, 11, 8, 25, 12"
    })
    @DisplayName("7.4 pyramid and single toxin, p0 .01, refuge .05 and .20")
    void pyramid(double ss, double rs, int pyramid05, int single05, int pyramid20, int single20) {
        double[] survival = {ss, rs, 1};
        assertThat(PyramidResistance.generationsToHalf(.05, .01, survival, survival, HORIZON))
                .isEqualTo(pyramid05);
        assertThat(PyramidResistance.generationsToHalf(.20, .01, survival, survival, HORIZON))
                .isEqualTo(pyramid20);
        assertThat(single(.05, ss, rs)).isEqualTo(single05);
        assertThat(single(.20, ss, rs)).isEqualTo(single20);
    }

    @Test
    @DisplayName("7.4 a pyramid with one failed toxin is exactly the single toxin")
    void failedToxin() {
        double[] kills = {.05, .10, 1};
        double[] nothing = {1, 1, 1};
        assertThat(PyramidResistance.generationsToHalf(.05, .01, kills, nothing, HORIZON))
                .isEqualTo(7);
        assertThat(PyramidResistance.generationsToHalf(.20, .01, nothing, kills, HORIZON))
                .isEqualTo(single(.20, .05, .10));
    }

    private static int single(double r, double ss, double rs) {
        return InsectResistance.generationsToHalf(
                .01, 1, InsectResistance.fitness(r, 1, rs), InsectResistance.fitness(r, 1, ss), HORIZON);
    }

    @Test
    @DisplayName("More refuge, never fewer generations; more dominance, never more")
    void directions() {
        for (double h = 0; h <= 1; h += .1) {
            int before = 0;
            for (double r = .02; r < .6; r += .02) {
                int steps = generations(.001, r, h, 0, 1);
                assertThat(steps).isGreaterThanOrEqualTo(before);
                assertThat(generations(.001, r, Math.min(h + .1, 1), 0, 1)).isLessThanOrEqualTo(steps);
                before = steps;
            }
        }
    }

    @Test
    @DisplayName("7.1 spraying the refuge shrinks it: share .2 with half surviving is .1111")
    void sprayedRefuge() {
        assertThat(InsectResistance.productiveRefuge(.2, 1)).isCloseTo(.2, within(1e-12));
        assertPrinted(InsectResistance.productiveRefuge(.2, .5), ".1111");
    }
}
