package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.Arrays;
import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How fast insects outgrow two toxins in one plant.
 *
 *   four gametes x_ab; each ordered pair weighs w = r + (1−r)·B_A[copies]·B_B[copies];
 *   each parent gamete gets x·x·w·(1−ρ)/2, each recombinant x·x·w·ρ/2; normalise
 *
 *   r refuge share [-];  B survival on one toxin with 0, 1 or 2 resistance copies, survival multiplies [-]
 *   ρ recombination, 0.5 for unlinked genes
 *
 * Both genes start at the same frequency, independent of each other. With one toxin failed the pyramid is a single toxin
 * with too small a refuge.
 *
 * Source: two-locus selection with random mating (value from memory).
 */
public final class PyramidResistance {
    private static final int HORIZON = 20_000;
    private static final double UNLINKED = 0.5;

    public static final Figure FIGURE = Figure.declare("pyramid-resistance", Subject.INSECTS)
            .question("In how many generations do insects outgrow two toxins in one plant?")
            .input(number("refuge_share", "Productive share of refuge", "", Range.SHARE, "0.05"))
            .input(number(
                    "initial_frequency", "Frequency of each resistance allele today", "", Range.open(0, 1), "0.01"))
            .input(number("survival_ss", "Survival of susceptible insects on one toxin", "", Range.SHARE, "0.05"))
            .input(number("survival_rs", "Survival of the mixed genotype on one toxin", "", Range.SHARE, "0.10"))
            .input(word(
                            "second_toxin",
                            "Whether the second toxin still kills here",
                            List.of("works", "failed"),
                            "works")
                    .orElse("works"))
            .output("generations_to_half", "Generations until one of the genes passes half", "generations")
            .output("single_generations", "The same with one toxin alone", "generations")
            .formula("two genes, four gametes; survival = refuge + (1 − refuge) × survival on A × survival on B")
            .source("Two-locus selection with random mating", MEMORY)
            .validity(
                    "Unlinked genes, no cost, fully resistant insects survive. Where half is not reached within 20,000 generations the words say so.")
            .caution("A teaching model: order of magnitude and direction, not a date.")
            .example(
                    "refuge_share=.05 initial_frequency=.01 survival_ss=.01 survival_rs=.01",
                    "generations_to_half=459.0 single_generations=10.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.20 initial_frequency=.01 survival_ss=.01 survival_rs=.01",
                    "generations_to_half=2206.0 single_generations=31.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.05 initial_frequency=.01 survival_ss=.05 survival_rs=.10",
                    "generations_to_half=38.0 single_generations=7.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.20 initial_frequency=.01 survival_ss=.05 survival_rs=.10",
                    "generations_to_half=163.0 single_generations=15.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.05 initial_frequency=.01 survival_ss=.05 survival_rs=.30",
                    "generations_to_half=11.0 single_generations=4.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.20 initial_frequency=.01 survival_ss=.20 survival_rs=.40",
                    "generations_to_half=25.0 single_generations=12.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.05 initial_frequency=.01 survival_ss=.05 survival_rs=.10 second_toxin=failed",
                    "generations_to_half=7.0 single_generations=7.0",
                    "one failed toxin is the single toxin",
                    COMPUTED)
            .model(PyramidResistance::solve);

    private PyramidResistance() {}

    /**
     * Generations until one of two genes first passes one half, or −1 where neither does within the horizon.
     *
     * @param onA survival on toxin A with 0, 1 and 2 resistance copies; likewise onB
     */
    public static int generationsToHalf(double refugeShare, double initial, double[] onA, double[] onB, int horizon) {
        double p = initial;
        double[] gametes = {(1 - p) * (1 - p), (1 - p) * p, p * (1 - p), p * p};
        double[] next = new double[4];
        for (int generation = 0; generation <= horizon; generation++) {
            if (Math.max(gametes[2] + gametes[3], gametes[1] + gametes[3]) > 0.5) {
                return generation;
            }
            select(refugeShare, gametes, onA, onB, next);
            double[] swap = gametes;
            gametes = next;
            next = swap;
        }
        return -1;
    }

    /** One generation. Gamete g carries resistance to A in its upper bit, to B in its lower. */
    private static void select(double refugeShare, double[] gametes, double[] onA, double[] onB, double[] next) {
        Arrays.fill(next, 0);
        double sum = 0;
        for (int first = 0; first < 4; first++) {
            for (int second = 0; second < 4; second++) {
                double survival = onA[(first >> 1) + (second >> 1)] * onB[(first & 1) + (second & 1)];
                double share = gametes[first] * gametes[second] * InsectResistance.fitness(refugeShare, 1, survival);
                next[first] += share * (1 - UNLINKED) / 2;
                next[second] += share * (1 - UNLINKED) / 2;
                next[(first & 2) | (second & 1)] += share * UNLINKED / 2;
                next[(second & 2) | (first & 1)] += share * UNLINKED / 2;
                sum += share;
            }
        }
        for (int g = 0; g < 4; g++) {
            next[g] /= sum;
        }
    }

    private static Outputs solve(Given given, Working working) {
        double r = given.number("refuge_share");
        double initial = given.number("initial_frequency");
        double ss = given.number("survival_ss");
        double rs = given.number("survival_rs");
        double[] kills = {ss, rs, 1};
        double[] second = given.word("second_toxin").equals("works") ? kills : new double[] {1, 1, 1};
        working.line(
                "fitness of insects susceptible to both",
                InsectResistance.fitness(r, 1, ss * second[0]),
                "",
                "{} + (1 − {}) × {} × {}",
                r,
                r,
                ss,
                second[0]);
        working.line(
                "fitness of insects mixed at the first gene",
                InsectResistance.fitness(r, 1, rs * second[0]),
                "",
                "{} + (1 − {}) × {} × {}",
                r,
                r,
                rs,
                second[0]);
        working.line(
                "fitness of insects resistant at the first gene",
                InsectResistance.fitness(r, 1, second[0]),
                "",
                "{} + (1 − {}) × 1 × {}",
                r,
                r,
                second[0]);
        Outputs outputs = new Outputs();
        Generations.put(
                outputs,
                working,
                "generations_to_half",
                "generations",
                generationsToHalf(r, initial, kills, second, HORIZON));
        Generations.put(
                outputs,
                working,
                "single_generations",
                "generations with one toxin",
                InsectResistance.generationsToHalf(
                        initial, 1, InsectResistance.fitness(r, 1, rs), InsectResistance.fitness(r, 1, ss), HORIZON));
        return outputs;
    }
}
