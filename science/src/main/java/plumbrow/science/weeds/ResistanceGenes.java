package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import java.util.TreeSet;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Resistance where more than one gene or one herbicide counts, and the count of sites of action.
 *
 * Alleles and finite fields are {@link HerbicideSelection}. Group numbers retired in 2020 are read as their successors:
 * 7 is 5, 8 and 16 are 15.
 *
 * Source: Diggle, Neve & Smith 2003, Weed Res. 43:371; WSSA fact sheet on the 2020 revision.
 */
public final class ResistanceGenes {
    private static final int HORIZON = 100_000;
    private static final double VISIBLE = .2;

    public static final Figure ALLELES = Figure.declare("resistance-alleles", Subject.WEEDS)
            .question("In how many years do resistant weeds show that cross with their neighbours?")
            .input(number("frequency", "Frequency of the resistance allele today", "", Range.open(0, 1), "1e-6"))
            .input(number("control_pct", "Control of susceptible plants", "%", Range.below(0, 100), "95"))
            .input(number("dominance_h", "Dominance: 0 recessive, 1 dominant", "", Range.SHARE, "0.5"))
            .input(number(
                            "dormant_share",
                            "Part of next spring's seed that is older than last season",
                            "",
                            Range.below(0, 1),
                            "0.627")
                    .orElse("0"))
            .output("years", "First year with more than 20 % resistant plants", "yr")
            .output("resistant_share", "Their share then", "")
            .formula("q' = d × q + (1 − d) × (q² + q(1−q) × s) ÷ W, s = 1 − E(1 − h), W = q² + 2q(1−q)s + (1−q)²(1−E)")
            .source("One gene, diploid, random mating, as in [learnpopgen]", VERIFIED)
            .validity(
                    "Recessive resistance counts only plants with both alleles. Where 20 % is not passed in 100,000 years the word never stands.")
            .caution("A teaching model: order of magnitude and direction, not a date.")
            .example("frequency=1e-6 control_pct=95 dominance_h=1", "years=4.0", "independent arithmetic", COMPUTED)
            .example("frequency=1e-6 control_pct=95 dominance_h=.5", "years=6.0", "independent arithmetic", COMPUTED)
            .example("frequency=1e-3 control_pct=95 dominance_h=0", "years=59.0", "independent arithmetic", COMPUTED)
            .model(ResistanceGenes::solveAlleles);

    public static final Figure DOUBLE = Figure.declare("double-resistance", Subject.WEEDS)
            .question("What is the chance that some seed on the farm already resists both herbicides?")
            .input(number("seeds_m2", "Viable seeds", "seeds/m²", Range.NOT_NEGATIVE, "100"))
            .input(number("area_ha", "Area", "ha", Range.NOT_NEGATIVE, "100"))
            .input(number("first_share", "Share that resists the first", "", Range.SHARE, "2e-6"))
            .input(number("second_share", "Share that resists the second", "", Range.SHARE, "2e-6"))
            .output("expected", "Seeds expected to resist both", "")
            .output("chance_pct", "Chance that there is one", "%")
            .formula("expected = seeds × area × r₁ × r₂; chance = 1 − exp(−expected)")
            .source("Finite fields: [diggle-2003]", VERIFIED)
            .validity(
                    "Independent resistances; a dominant allele of frequency f makes a share of about 2f. Metabolic resistance can cover both at once.")
            .caution("A mixture delays resistance only while each partner alone would control the weed.")
            .example(
                    "seeds_m2=100 area_ha=100 first_share=2e-6 second_share=2e-6",
                    "expected=.00040 chance_pct=.0400",
                    "independent arithmetic",
                    COMPUTED)
            .model(ResistanceGenes::solveDouble);

    public static final Figure GROUPS = Figure.declare("action-sites", Subject.WEEDS)
            .question("How many sites of action are really in this mix?")
            .input(list(
                    "groups", "Group number on the label of each active ingredient", "", Range.closed(0, 99), "7,5"))
            .output("sites", "Different sites of action", "")
            .output("group_numbers", "Group numbers since 2020", "")
            .formula("distinct numbers, with 7 read as 5, 8 and 16 as 15")
            .source("[hrac-wssa-2020]", VERIFIED)
            .validity("Whole numbers as printed on labels. It counts sites, not whether each works on this weed.")
            .caution("Count only what works on the weed at this rate and size: two sites of which one fails is one.")
            .example("groups=5,5", "sites=1.0", "atrazine and metribuzin", MEMORY)
            .example("groups=7,5", "sites=1.0 group_numbers=5", "linuron from an old label and atrazine", MEMORY)
            .example("groups=15,8", "sites=1.0 group_numbers=15", "S-metolachlor and EPTC", MEMORY)
            .example("groups=6,5", "sites=2.0", "bentazon and atrazine", MEMORY)
            .example("groups=14,15", "sites=2.0", "flumioxazin and pyroxasulfone", MEMORY)
            .example("groups=27,5", "sites=2.0", "mesotrione and atrazine", MEMORY)
            .model(ResistanceGenes::solveGroups);

    private ResistanceGenes() {}

    private static double plants(double q, double dominance) {
        return dominance == 0 ? q * q : 1 - (1 - q) * (1 - q);
    }

    private static Outputs solveAlleles(Given given, Working working) {
        double q = given.number("frequency");
        double left = 1 - given.number("control_pct") / 100;
        double h = given.number("dominance_h");
        double d = given.number("dormant_share");
        double mixed = working.line(
                "survival of the mixed genotype", 1 - (1 - left) * (1 - h), "", "1 − (1 − {}) × (1 − {})", left, h);
        working.line(
                "frequency after one year",
                HerbicideSelection.nextFrequency(q, left, h, d),
                "",
                "{} × {} + (1 − {}) × ({}² + {} × (1 − {}) × {}) ÷ ({}² + 2 × {} × (1 − {}) × {} + (1 − {})² × {})",
                d,
                q,
                d,
                q,
                q,
                q,
                mixed,
                q,
                q,
                q,
                mixed,
                q,
                left);
        int years = 0;
        double share = plants(q, h);
        while (share <= VISIBLE && years < HORIZON) {
            q = HerbicideSelection.nextFrequency(q, left, h, d);
            share = plants(q, h);
            years++;
        }
        Outputs outputs = new Outputs().put("resistant_share", share);
        return share > VISIBLE
                ? outputs.put("years", working.step("years to more than 20 %", "the same step repeated", years, "yr"))
                : outputs.put("years", "never");
    }

    private static Outputs solveDouble(Given given, Working working) {
        double seeds = working.line(
                "seeds on the area",
                given.number("seeds_m2") * given.number("area_ha") * 1e4,
                "",
                "{} × {} × 10000",
                given.number("seeds_m2"),
                given.number("area_ha"));
        double first = given.number("first_share");
        double second = given.number("second_share");
        double expected = working.line(
                "seeds that resist both",
                HerbicideSelection.expectedDouble(seeds, first, second),
                "",
                "{} × {} × {}",
                seeds,
                first,
                second);
        return new Outputs()
                .put("expected", expected)
                .put(
                        "chance_pct",
                        working.line(
                                "chance that there is one",
                                100 * HerbicideSelection.chancePresent(expected),
                                "%",
                                "100 × (1 − exp(−{}))",
                                expected));
    }

    private static Outputs solveGroups(Given given, Working working) {
        TreeSet<Integer> sites = new TreeSet<>();
        for (double group : given.list("groups")) {
            if (group != Math.rint(group)) {
                throw given.refuse("groups", "whole group numbers");
            }
            if (group == 7 || group == 8 || group == 16) {
                working.caution("Group " + Numbers.plain(group) + " was retired in 2020: read as "
                        + (group == 7 ? 5 : 15) + ".");
            }
            sites.add(group == 7 ? 5 : group == 8 || group == 16 ? 15 : (int) group);
        }
        List<Integer> numbers = List.copyOf(sites);
        return new Outputs()
                .put("sites", working.step("different sites", "distinct groups of " + numbers, sites.size(), ""))
                .put(
                        "group_numbers",
                        numbers.stream().mapToDouble(Integer::doubleValue).toArray());
    }
}
