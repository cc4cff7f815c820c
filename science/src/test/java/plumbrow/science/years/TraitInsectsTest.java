package plumbrow.science.years;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.insects.BlendResistance;
import plumbrow.science.insects.InsectResistance;
import plumbrow.science.insects.PyramidResistance;

@DisplayName("Insects that outgrow a trait, against values from outside")
class TraitInsectsTest {
    private static final double[] EVEN = {1, 1, 1};

    private static double[] onTrait(double ss, double h, double rr) {
        return new double[] {ss, InsectResistance.mixedSurvival(ss, rr, h), rr};
    }

    private static TraitLot trait(double share, double... survival) {
        return new TraitLot(share, 0, new double[][] {survival}, 0, 1);
    }

    private static TraitLot refuge(double share) {
        return new TraitLot(share, 1, new double[][] {EVEN}, 0, 1);
    }

    /** Generations until more than half of the alleles of a gene resist, at most 5000. */
    private static int toHalf(TraitInsects insects, List<TraitLot> lots, double mixing, double... start) {
        insects.start(start);
        double[] shares = lots.stream().mapToDouble(TraitLot::share).toArray();
        double[][] fitness = insects.fitness(lots);
        for (int generation = 0; generation <= 5000; generation++) {
            for (int gene = 0; gene < start.length; gene++) {
                if (insects.frequency(gene) > .5) {
                    return generation;
                }
            }
            insects.generation(shares, fitness, mixing);
        }
        return 5001;
    }

    private static int block(double p0, double r, double h, double ss, double rr, double cost, double mixing) {
        return toHalf(
                new TraitInsects(new double[] {cost}, 0),
                List.of(refuge(r), trait(1 - r, onTrait(ss, h, rr))),
                mixing,
                p0);
    }

    @ParameterizedTest(name = "p0 {0}, refuge {1}, h {2}, on trait {3}: {4} generations")
    @CsvSource({
        ".001, .05, 0, 0, 59", ".001, .20, .05, 0, 25", ".001, .50, .5, 0, 18", ".01, .20, 0, 0, 30",
        ".01, .10, .05, 0, 8", ".001, .05, 0, .05, 115", ".001, .20, 0, .05, 324", ".001, .10, .25, .05, 8",
        ".001, .20, 1, .05, 6", ".01, .20, .3, .01, 6", ".01, .05, .3, .01, 3"
    })
    @DisplayName("7.2: block refuge with adults mixing freely")
    void blockRefuge(double p0, double r, double h, double ss, int generations) {
        assertThat(block(p0, r, h, ss, 1, 0, 1)).isEqualTo(generations);
    }

    @Test
    @DisplayName("7.2: every generation equals the recursion, .01 to .147997 in ten")
    void trajectory() {
        TraitInsects insects = new TraitInsects(new double[] {0}, 0);
        List<TraitLot> lots = List.of(refuge(.2), trait(.8, onTrait(0, .05, 1)));
        insects.start(new double[] {.01});
        double p = .01;
        for (int i = 0; i < 10; i++) {
            insects.generation(new double[] {.2, .8}, insects.fitness(lots), 1);
            p = InsectResistance.next(p, 1, InsectResistance.fitness(.2, 1, .05), .2);
            assertThat(insects.frequency(0)).isCloseTo(p, withPercentage(1e-10));
        }
        assertThat(p).isCloseTo(.147997, within(5e-7));
    }

    @ParameterizedTest(name = "refuge {0}: {1}")
    @CsvSource({".20, 73", ".25, 213", ".28, 1469", ".29, 5001", ".40, 5001"})
    @DisplayName("7.2: a recessive cost of .5 with incomplete resistance .2: declines above a refuge of .2857")
    void cost(double r, int generations) {
        assertThat(block(.05, r, 0, 0, .2, .5, 1)).isEqualTo(generations);
    }

    @ParameterizedTest(name = "refuge {0}, moving {1}: {2}")
    @CsvSource({
        ".05, 0, 7",
        ".05, .1, 7",
        ".05, .3, 7",
        ".05, .5, 6",
        ".20, 0, 18",
        ".20, .1, 17",
        ".20, .3, 15",
        ".20, .5, 13"
    })
    @DisplayName("7.3: blend with moving larvae; movement shortens durability")
    void blend(double r, double moving, int generations) {
        TraitLot bag = new TraitLot(1, r, new double[][] {{.01, .10, 1}}, moving, .5);
        assertThat(toHalf(new TraitInsects(new double[] {0}, 0), List.of(bag), 1, .001))
                .isEqualTo(generations);
        assertThat(bag.fitness(Genotypes.of(1), EVEN)[0]).isEqualTo(BlendResistance.fitness(r, .01, moving, .5));
    }

    @ParameterizedTest(name = "on trait {0}, {1}; refuge {2}: {3}")
    @CsvSource({
        ".01, .01, .05, 459",
        ".01, .01, .20, 2206",
        ".05, .10, .05, 38",
        ".05, .10, .20, 163",
        ".05, .30, .05, 11",
        ".05, .30, .20, 42",
        ".20, .40, .05, 11",
        ".20, .40, .20, 25"
    })
    @DisplayName("7.4: two toxins in one plant")
    void pyramid(double ss, double rs, double r, int generations) {
        double[] on = {ss, rs, 1};
        List<TraitLot> lots = List.of(refugeOfTwo(r), new TraitLot(1 - r, 0, new double[][] {on, on}, 0, 1));
        assertThat(toHalf(new TraitInsects(new double[] {0, 0}, 0), lots, 1, .01, .01))
                .isEqualTo(generations);
        assertThat(PyramidResistance.generationsToHalf(r, .01, on, on, 5000)).isEqualTo(generations);
    }

    @Test
    @DisplayName("7.4: a pyramid with one failed toxin lasts 7 generations, the single toxin's with 5 % refuge")
    void failedPyramid() {
        List<TraitLot> lots =
                List.of(refugeOfTwo(.05), new TraitLot(.95, 0, new double[][] {{.05, .10, 1}, EVEN}, 0, 1));
        assertThat(toHalf(new TraitInsects(new double[] {0, 0}, 0), lots, 1, .01, .01))
                .isEqualTo(7);
    }

    private static TraitLot refugeOfTwo(double share) {
        return new TraitLot(share, 1, new double[][] {EVEN, EVEN}, 0, 1);
    }

    @Test
    @DisplayName("A bigger refuge is never faster, nor is a refuge whose adults mix more")
    void monotone() {
        for (double mixing : new double[] {1, .7, .3}) {
            int before = 0;
            for (double r : new double[] {.01, .05, .1, .2, .35, .5}) {
                int generations = block(.001, r, .05, .01, 1, 0, mixing);
                assertThat(generations).isGreaterThanOrEqualTo(before);
                before = generations;
            }
        }
        int before = 0;
        for (double mixing : new double[] {0, .1, .3, .6, .9, 1}) {
            int generations = block(.001, .2, .02, .001, 1, 0, mixing);
            assertThat(generations).as("mixing " + mixing).isGreaterThanOrEqualTo(before);
            before = generations;
        }
    }

    @Test
    @DisplayName(
            "Limits: all refuge selects nothing; shares of eggs sum to 1; nothing left leaves the eggs as they were")
    void limits() {
        TraitInsects insects = new TraitInsects(new double[] {0}, 0);
        insects.start(new double[] {.1});
        insects.generation(new double[] {1}, insects.fitness(List.of(refuge(1))), .5);
        assertThat(insects.frequency(0)).isCloseTo(.1, within(1e-12));
        assertThat(insects.resistantShare(0, 0)).isCloseTo(.01, within(1e-12));
        assertThat(insects.resistantShare(0, 1)).isCloseTo(.19, within(1e-12));
        insects.generation(new double[] {1}, insects.fitness(List.of(trait(1, 0, 0, 0))), 1);
        assertThat(insects.frequency(0)).isCloseTo(.1, within(1e-12));
    }
}
