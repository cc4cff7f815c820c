package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How fast insects outgrow a trait, with a refuge that keeps susceptible ones alive.
 *
 *   W_g = r·F_g + (1−r)·B_g;  p' = (p²·W_RR + pq·W_RS) / (p²·W_RR + 2pq·W_RS + q²·W_SS),  q = 1 − p
 *   on the trait B_RS = B_SS + h·(B_RR − B_SS); in the refuge F = 1
 *
 *   p    frequency of the resistance allele among eggs [-]
 *   r    productive share of refuge [-]; spraying the refuge lowers it
 *   B_g  survival on the trait by genotype [-];  h dominance, 0 recessive to 1 dominant
 *
 * One locus, diploid, random mating, discrete generations, eggs laid at random. Rootworm has one generation a year, corn
 * borer two in most of the Corn Belt. Dominance and dose matter more than the size of the refuge.
 *
 * Source: Comins 1977; Alstad & Andow 1995 (lineage from memory); selection on one gene as in R package learnPopGen.
 */
public final class InsectResistance {
    private static final int HORIZON = 20_000;
    private static final int LONGEST_LIST = 2_000;
    private static final double HALF = 0.5;

    public static final Figure FIGURE = Figure.declare("insect-resistance", Subject.INSECTS)
            .question("In how many generations do insects outgrow the trait?")
            .input(number("refuge_share", "Productive share of refuge", "", Range.SHARE, "0.2"))
            .input(number(
                    "initial_frequency", "Frequency of the resistance allele today", "", Range.open(0, 1), "0.001"))
            .input(number("dominance_h", "Dominance: 0 recessive, 1 dominant", "", Range.SHARE, "0.05"))
            .input(number("survival_rr", "Survival of fully resistant insects on the trait", "", Range.SHARE, "1")
                    .orElse("1"))
            .input(number("survival_ss", "Survival of susceptible insects on the trait", "", Range.SHARE, "0")
                    .orElse("0"))
            .input(number("generations", "Generations to list", "", Range.closed(1, LONGEST_LIST), "20")
                    .optional())
            .output("generations_to_half", "Generations until more than half of the alleles resist", "generations")
            .output("frequencies", "Frequency of resistance, today and after each generation", "")
            .formula("p' = (p²W_RR + pqW_RS) ÷ (p²W_RR + 2pqW_RS + q²W_SS), W = r + (1−r) × survival on the trait")
            .source(
                    "Selection on one gene as in [learnpopgen], averaged over refuge and trait; lineage [comins-1977]; [alstad-andow-1995]",
                    VERIFIED)
            .validity(
                    "One gene, random mating, no cost of resistance. Where half is not reached within 20,000 generations the"
                            + " words say so. Without generations the list runs to half, at most 100.")
            .caution("A teaching model: order of magnitude and direction, not a date.")
            .example(
                    "refuge_share=.05 initial_frequency=.001 dominance_h=0",
                    "generations_to_half=59.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.2 initial_frequency=.01 dominance_h=.05 generations=10",
                    "generations_to_half=13.0 frequencies=.010000,.012326,.015285,.019097,.024087,.030748,.039865,.052734,.071621,.100693,.147997",
                    "trajectory",
                    COMPUTED)
            .example(
                    "refuge_share=.10 initial_frequency=.001 dominance_h=.25 survival_ss=.05",
                    "generations_to_half=8.0",
                    "moderate dose, rootworm-like",
                    COMPUTED)
            .model(InsectResistance::solve);

    private InsectResistance() {}

    /** The frequency one generation on, from the fitness of the three genotypes; the mean fitness must be above 0. */
    public static double next(double frequency, double fitnessRr, double fitnessRs, double fitnessSs) {
        double p = frequency;
        double q = 1 - p;
        double resistant = p * p * fitnessRr + p * q * fitnessRs;
        return resistant / (resistant + p * q * fitnessRs + q * q * fitnessSs);
    }

    /** r·F + (1−r)·B, the fitness of a genotype over refuge and trait. */
    public static double fitness(double refugeShare, double inRefuge, double onTrait) {
        return refugeShare * inRefuge + (1 - refugeShare) * onTrait;
    }

    /** B_SS + h·(B_RR − B_SS), survival of the mixed genotype on the trait. */
    public static double mixedSurvival(double survivalSs, double survivalRr, double dominance) {
        return survivalSs + dominance * (survivalRr - survivalSs);
    }

    /** The share of refuge that still breeds when it is sprayed: r·s/(r·s + 1−r), s survival in the refuge. */
    public static double productiveRefuge(double refugeShare, double survivalInRefuge) {
        double left = refugeShare * survivalInRefuge;
        return left / (left + 1 - refugeShare);
    }

    /** Steps until the frequency first passes one half, or −1 where it does not within the horizon. */
    public static int generationsToHalf(
            double initial, double fitnessRr, double fitnessRs, double fitnessSs, int horizon) {
        double p = initial;
        for (int generation = 0; generation <= horizon; generation++) {
            if (p > HALF) {
                return generation;
            }
            p = next(p, fitnessRr, fitnessRs, fitnessSs);
        }
        return -1;
    }

    private static Outputs solve(Given given, Working working) {
        double refuge = given.number("refuge_share");
        double initial = given.number("initial_frequency");
        double h = given.number("dominance_h");
        double rr = given.number("survival_rr");
        double ss = given.number("survival_ss");
        if (given.numberOr("generations", 1) != Math.rint(given.numberOr("generations", 1))) {
            throw given.refuse("generations", "a whole number from 1 to 2,000");
        }
        if (refuge == 0 && Math.max(rr, ss) == 0) {
            throw given.refuse("refuge_share", "more than 0 where nothing survives on the trait: no insect is left");
        }
        double rs = working.line(
                "survival of the mixed genotype", mixedSurvival(ss, rr, h), "", "{} + {} × ({} − {})", ss, h, rr, ss);
        double fitnessRr =
                working.line("fitness RR", fitness(refuge, 1, rr), "", "{} + (1 − {}) × {}", refuge, refuge, rr);
        double fitnessRs =
                working.line("fitness RS", fitness(refuge, 1, rs), "", "{} + (1 − {}) × {}", refuge, refuge, rs);
        double fitnessSs =
                working.line("fitness SS", fitness(refuge, 1, ss), "", "{} + (1 − {}) × {}", refuge, refuge, ss);
        int toHalf = generationsToHalf(initial, fitnessRr, fitnessRs, fitnessSs, HORIZON);
        int listed = (int) given.numberOr("generations", toHalf < 0 ? 100 : Math.min(Math.max(toHalf, 1), 100));
        double[] frequencies = new double[listed + 1];
        frequencies[0] = initial;
        for (int i = 1; i <= listed; i++) {
            frequencies[i] = next(frequencies[i - 1], fitnessRr, fitnessRs, fitnessSs);
        }
        working.line(
                "frequency after one generation",
                frequencies[1],
                "",
                "({}² × {} + {} × {} × {}) ÷ ({}² × {} + 2 × {} × {} × {} + {}² × {})",
                initial,
                fitnessRr,
                initial,
                1 - initial,
                fitnessRs,
                initial,
                fitnessRr,
                initial,
                1 - initial,
                fitnessRs,
                1 - initial,
                fitnessSs);
        Outputs outputs = new Outputs();
        if (toHalf < 0) {
            outputs.put(
                    "generations_to_half",
                    frequencies[1] < initial ? "never: resistance declines" : "not within 20,000");
        } else {
            outputs.put(
                    "generations_to_half",
                    working.step("generations until more than half", "the same step repeated", toHalf, ""));
        }
        return outputs.put("frequencies", frequencies);
    }
}
