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
 * What a sprayed refuge is still worth, and a first guess of the generations a refuge buys.
 *
 *   r_eff = r·s/(r·s + 1 − r)
 *   recessive, high dose: T ≈ r/(1 − r)·(1/p₀ − 1/p_T);  partly dominant: T ≈ ln(p_T/p₀)/ln(W_RS/W_SS), W = r + (1 − r)·B
 *
 *   r  share of refuge;  s  share of refuge insects that outlive the spray;  p  frequency of the resistant allele, p_T 0.5
 *   B  survival on the trait
 *
 * The guess is of the analytic limits, the simulation of insect-resistance counts every generation.
 *
 * Source: limits of the recursion of Comins 1977 (derived); r_eff common practice.
 */
public final class RefugeWorth {
    private static final double HALF = 0.5;

    public static final Figure EFFECTIVE = Figure.declare("effective-refuge", Subject.INSECTS)
            .question("How much refuge is left where the refuge is sprayed?")
            .input(number("refuge_share", "Share of refuge", "", Range.open(0, 1), "0.2"))
            .input(number("survival_share", "Insects in the refuge that outlive the spray", "", Range.SHARE, "0.25"))
            .output("refuge_share", "Share of refuge it is worth", "")
            .formula("worth = r × s ÷ (r × s + 1 − r)")
            .source("Arithmetic of insects that come from the refuge", PRACTICE)
            .validity("The spray kills all kinds alike. Trait acres are not sprayed.")
            .caution("Many agreements let the refuge be sprayed only at threshold, never with a Bt spray: read yours.")
            .example("refuge_share=.2 survival_share=.25", "refuge_share=.0588", "0.05 ÷ 0.85 by hand", COMPUTED)
            .example("refuge_share=.2 survival_share=1", "refuge_share=.2", "no spray", COMPUTED)
            .example("refuge_share=.2 survival_share=0", "refuge_share=0", "no refuge left", COMPUTED)
            .model(RefugeWorth::solveEffective);

    public static final Figure GUESS = Figure.declare("resistance-guess", Subject.INSECTS)
            .question("About how many generations does this refuge buy?")
            .input(number("refuge_share", "Productive share of refuge", "", Range.open(0, 1), "0.2"))
            .input(number("initial_frequency", "Frequency of the resistant allele", "", Range.open(0, HALF), "0.001"))
            .input(number("survival_ss", "Survival of susceptible insects on the trait", "", Range.SHARE, "0")
                    .orElse("0"))
            .input(number("survival_rs", "Survival of insects with one resistant allele", "", Range.SHARE, "0")
                    .orElse("0"))
            .output("generations", "Generations until half of the alleles resist", "generations")
            .formula("recessive: r ÷ (1 − r) × (1 ÷ p − 2); partly dominant: ln(0.5 ÷ p) ÷ ln(W of RS ÷ W of SS)")
            .source("limits of the recursion of [comins-1977], derived", COMPUTED)
            .validity(
                    "No cost of resistance. The first where both survivals are 0, the second where RS outlive SS; else refused.")
            .caution(
                    "A guess a few per cent low for recessive genes, up to half for dominant ones: see insect-resistance.")
            .example("refuge_share=.05 initial_frequency=.001", "generations=53", "independent arithmetic", COMPUTED)
            .example("refuge_share=.10 initial_frequency=.001", "generations=111", "independent arithmetic", COMPUTED)
            .example("refuge_share=.20 initial_frequency=.001", "generations=250", "independent arithmetic", COMPUTED)
            .example("refuge_share=.50 initial_frequency=.001", "generations=998", "independent arithmetic", COMPUTED)
            .model(RefugeWorth::solveGuess);

    private RefugeWorth() {}

    /** Share of refuge that a refuge of share r is worth where a share of its insects outlives the spray. */
    public static double effectiveShare(double refugeShare, double survivalShare) {
        return refugeShare * survivalShare / (refugeShare * survivalShare + 1 - refugeShare);
    }

    private static Outputs solveEffective(Given given, Working working) {
        double refuge = given.number("refuge_share");
        double survival = given.number("survival_share");
        return new Outputs()
                .put(
                        "refuge_share",
                        working.line(
                                "worth",
                                effectiveShare(refuge, survival),
                                "",
                                "{} × {} ÷ ({} × {} + 1 − {})",
                                refuge,
                                survival,
                                refuge,
                                survival,
                                refuge));
    }

    private static Outputs solveGuess(Given given, Working working) {
        double refuge = given.number("refuge_share");
        double start = given.number("initial_frequency");
        double ss = given.number("survival_ss");
        double rs = given.number("survival_rs");
        if (ss == 0 && rs == 0) {
            return new Outputs()
                    .put(
                            "generations",
                            working.line(
                                    "generations",
                                    refuge / (1 - refuge) * (1 / start - 1 / HALF),
                                    "",
                                    "{} ÷ (1 − {}) × (1 ÷ {} − 2)",
                                    refuge,
                                    refuge,
                                    start));
        }
        if (rs <= ss) {
            throw given.refuse("survival_rs", "a survival above survival_ss, or 0 for both");
        }
        double fitRs =
                working.line("fitness of RS", refuge + (1 - refuge) * rs, "", "{} + (1 − {}) × {}", refuge, refuge, rs);
        double fitSs =
                working.line("fitness of SS", refuge + (1 - refuge) * ss, "", "{} + (1 − {}) × {}", refuge, refuge, ss);
        return new Outputs()
                .put(
                        "generations",
                        working.line(
                                "generations",
                                Math.log(HALF / start) / Math.log(fitRs / fitSs),
                                "",
                                "ln(0.5 ÷ {}) ÷ ln({} ÷ {})",
                                start,
                                fitRs,
                                fitSs));
    }
}
