package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The refuge at which a cost of resistance turns selection around.
 *
 *   with recessive cost k in the refuge and survival L of resistant insects on the trait: R declines if r > L/(L + k)
 *
 * Source: from the recursion of {@link InsectResistance} with F_RR = 1 − k; Comins 1977 (lineage from memory).
 */
public final class ResistanceCost {
    private static final int HORIZON = 20_000;

    public static final Figure FIGURE = Figure.declare("resistance-cost", Subject.INSECTS)
            .question("How large a refuge makes resistance decline where it costs the insect something?")
            .input(number(
                    "survival_rr", "Survival of fully resistant insects on the trait", "", Range.above(0, 1), "0.2"))
            .input(number("cost_rr", "Fitness that resistance costs in the refuge", "", Range.SHARE, "0.5"))
            .input(number("refuge_share", "Productive share of refuge", "", Range.above(0, 1), "0.25"))
            .input(number(
                    "initial_frequency", "Frequency of the resistance allele today", "", Range.open(0, 1), "0.05"))
            .output("refuge_that_turns", "Share of refuge from which resistance declines", "")
            .output("generations_to_half", "Generations until more than half of the alleles resist", "generations")
            .formula("declines if refuge > survival ÷ (survival + cost)")
            .source("Recursion of one recessive gene with a cost in the refuge", MEMORY)
            .validity(
                    "Recessive resistance and cost; susceptible and mixed insects die on the trait. Declining resistance is said in words.")
            .caution("A teaching model: order of magnitude and direction, not a date.")
            .example(
                    "survival_rr=.2 cost_rr=.5 refuge_share=.20 initial_frequency=.05",
                    "refuge_that_turns=.2857 generations_to_half=73.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "survival_rr=.2 cost_rr=.5 refuge_share=.25 initial_frequency=.05",
                    "generations_to_half=213.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "survival_rr=.2 cost_rr=.5 refuge_share=.28 initial_frequency=.05",
                    "generations_to_half=1469.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "survival_rr=.2 cost_rr=.5 refuge_share=.29 initial_frequency=.05",
                    "generations_to_half=never: resistance declines",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "survival_rr=.2 cost_rr=.5 refuge_share=.40 initial_frequency=.05",
                    "generations_to_half=never: resistance declines",
                    "independent arithmetic",
                    COMPUTED)
            .model(ResistanceCost::solve);

    private ResistanceCost() {}

    private static Outputs solve(Given given, Working working) {
        double survival = given.number("survival_rr");
        double cost = given.number("cost_rr");
        double refuge = given.number("refuge_share");
        double initial = given.number("initial_frequency");
        double turns = working.line(
                "refuge that turns it", survival / (survival + cost), "", "{} ÷ ({} + {})", survival, survival, cost);
        double fitnessRr = working.line(
                "fitness RR",
                InsectResistance.fitness(refuge, 1 - cost, survival),
                "",
                "{} × (1 − {}) + (1 − {}) × {}",
                refuge,
                cost,
                refuge,
                survival);
        working.line("fitness RS and SS", refuge, "", "{} × 1 + (1 − {}) × 0", refuge, refuge);
        Outputs outputs = new Outputs().put("refuge_that_turns", turns);
        int generations = InsectResistance.generationsToHalf(initial, fitnessRr, refuge, refuge, HORIZON);
        if (generations < 0 && fitnessRr < refuge) {
            return outputs.put("generations_to_half", "never: resistance declines");
        }
        Generations.put(outputs, working, "generations_to_half", "generations", generations);
        return outputs;
    }
}
