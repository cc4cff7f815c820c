package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How fast insects outgrow a trait in a seed blend, where larvae move between plants.
 *
 *   A_g = r + (1−r)·B_g;  W_g = (1−m)·A_g + m·[r·A_g + (1−r)·B_g^τ·A_g];  then as in {@link InsectResistance}
 *
 *   m  share of larvae that leave their first plant once [-];  τ share of the dose that a mover takes from it [-]
 *   B_g survival on the trait by genotype [-];  r share of refuge plants [-]
 *
 * With m = 0 it is the block refuge. Movement shortens durability. Defined for teaching, not fitted to data.
 *
 * Source: own definition after the lineage of Comins 1977.
 */
public final class BlendResistance {
    private static final int HORIZON = 20_000;

    public static final Figure FIGURE = Figure.declare("blend-resistance", Subject.INSECTS)
            .question("How much sooner do insects outgrow a trait in a blend, where larvae move?")
            .input(number("refuge_share", "Share of refuge plants", "", Range.SHARE, "0.05"))
            .input(number(
                    "initial_frequency", "Frequency of the resistance allele today", "", Range.open(0, 1), "0.001"))
            .input(number("survival_ss", "Survival of susceptible insects on the trait", "", Range.SHARE, "0.01"))
            .input(number("survival_rs", "Survival of the mixed genotype on the trait", "", Range.SHARE, "0.10"))
            .input(number("survival_rr", "Survival of fully resistant insects on the trait", "", Range.above(0, 1), "1")
                    .orElse("1"))
            .input(number("moving_share", "Larvae that leave their first plant", "", Range.SHARE, "0.3"))
            .input(number("dose_share", "Share of the dose that a mover takes from it", "", Range.SHARE, "0.5")
                    .orElse("0.5"))
            .output("generations_to_half", "Generations until more than half of the alleles resist", "generations")
            .output("generations_if_block", "The same with no larva moving", "generations")
            .output("fitness_ss", "Fitness of susceptible insects", "")
            .formula("W = (1 − m) × A + m × [r × A + (1 − r) × B^τ × A], A = r + (1 − r) × B")
            .source("Defined for teaching; not a published fit", PRACTICE)
            .validity(
                    "One gene, random mating, one move per larva. Where half is not reached within 20,000 generations the words say so.")
            .caution("A teaching model: order of magnitude and direction, not a date.")
            .example(
                    "refuge_share=.05 initial_frequency=.001 survival_ss=.01 survival_rs=.10 moving_share=.1",
                    "fitness_ss=.0544 generations_to_half=7.0 generations_if_block=7.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.05 initial_frequency=.001 survival_ss=.01 survival_rs=.10 moving_share=.5",
                    "fitness_ss=.0341 generations_to_half=6.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.20 initial_frequency=.001 survival_ss=.01 survival_rs=.10 moving_share=.3",
                    "fitness_ss=.163 generations_to_half=15.0 generations_if_block=18.0",
                    "independent arithmetic",
                    COMPUTED)
            .model(BlendResistance::solve);

    private BlendResistance() {}

    /** W_g of a genotype in a blend with moving larvae. */
    public static double fitness(double refugeShare, double onTrait, double movingShare, double doseShare) {
        return fitness(refugeShare, 1, onTrait, movingShare, doseShare);
    }

    /** The same where plants without the trait cost a genotype part of its fitness. */
    public static double fitness(
            double refugeShare, double inRefuge, double onTrait, double movingShare, double doseShare) {
        double settled = InsectResistance.fitness(refugeShare, inRefuge, onTrait);
        double firstPlant = refugeShare + (1 - refugeShare) * Math.pow(onTrait, doseShare);
        return (1 - movingShare) * settled + movingShare * firstPlant * settled;
    }

    private static Outputs solve(Given given, Working working) {
        double r = given.number("refuge_share");
        double initial = given.number("initial_frequency");
        double m = given.number("moving_share");
        double dose = given.number("dose_share");
        double[] survival = {given.number("survival_rr"), given.number("survival_rs"), given.number("survival_ss")};
        String[] names = {"RR", "RS", "SS"};
        double[] moving = new double[3];
        double[] block = new double[3];
        for (int g = 0; g < 3; g++) {
            block[g] = working.line(
                    "fitness " + names[g] + " in a block",
                    InsectResistance.fitness(r, 1, survival[g]),
                    "",
                    "{} + (1 − {}) × {}",
                    r,
                    r,
                    survival[g]);
            moving[g] = working.line(
                    "fitness " + names[g] + " in the blend",
                    fitness(r, survival[g], m, dose),
                    "",
                    "(1 − {}) × {} + {} × [{} + (1 − {}) × {}^{}] × {}",
                    m,
                    block[g],
                    m,
                    r,
                    r,
                    survival[g],
                    dose,
                    block[g]);
        }
        Outputs outputs = new Outputs();
        Generations.put(
                outputs,
                working,
                "generations_to_half",
                "generations",
                InsectResistance.generationsToHalf(initial, moving[0], moving[1], moving[2], HORIZON));
        Generations.put(
                outputs,
                working,
                "generations_if_block",
                "generations in a block",
                InsectResistance.generationsToHalf(initial, block[0], block[1], block[2], HORIZON));
        return outputs.put("fitness_ss", moving[2]);
    }
}
