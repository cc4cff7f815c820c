package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How many plants resist at a frequency of the resistant gene, in weeds that cross and in weeds that pollinate themselves.
 *
 *   two copies p²(1 − F) + p·F;  one copy 2p(1 − p)(1 − F);  none (1 − p)²(1 − F) + (1 − p)·F
 *
 *   p  frequency of the resistant gene;  F  inbreeding, 0 where all cross, 1 where all self
 *
 * Source: Maxwell, Roush & Radosevich 1990, Weed Technol. 4:2.
 */
public final class GenotypeShares {
    public static final Figure FIGURE = Figure.declare("genotype-shares", Subject.WEEDS)
            .question("What share of the weeds resists when the gene has this frequency?")
            .input(number("frequency", "Frequency of the resistant gene", "", Range.SHARE, "0.01"))
            .input(number("inbreeding", "Inbreeding: 0 crosses, 1 pollinates itself", "", Range.SHARE, "0")
                    .orElse("0"))
            .input(word("gene", "Whether one copy is enough", List.of("dominant", "recessive"), "dominant"))
            .output("resist_share", "Plants that resist", "")
            .output("two_share", "With two copies", "")
            .output("one_share", "With one copy", "")
            .formula("two = p² × (1 − F) + p × F; one = 2 × p × (1 − p) × (1 − F); dominant: two + one, recessive: two")
            .source("[maxwell-1990]", VERIFIED)
            .validity("One gene, before the spray has selected in this generation.")
            .caution("A survivor is noticed at 10 to 30 % of the stand: by then the gene is common.")
            .example(
                    "frequency=.01 inbreeding=0 gene=dominant",
                    "resist_share=.0199 two_share=.0001 one_share=.0198",
                    "Hardy and Weinberg, by hand",
                    COMPUTED)
            .example(
                    "frequency=.01 inbreeding=1 gene=recessive",
                    "resist_share=.01 two_share=.01 one_share=0",
                    "all self: shares are frequencies",
                    COMPUTED)
            .example(
                    "frequency=.2 inbreeding=.5 gene=recessive",
                    "resist_share=.12 one_share=.16",
                    "0.04 × 0.5 + 0.2 × 0.5, by hand",
                    COMPUTED)
            .model(GenotypeShares::solve);

    private GenotypeShares() {}

    /** Share of plants with so many resistant copies, 0 to 2, at a frequency of the gene and an inbreeding. */
    public static double of(int copies, double frequency, double inbreeding) {
        double p = frequency;
        return switch (copies) {
            case 0 -> (1 - p) * (1 - p) * (1 - inbreeding) + (1 - p) * inbreeding;
            case 1 -> 2 * p * (1 - p) * (1 - inbreeding);
            case 2 -> p * p * (1 - inbreeding) + p * inbreeding;
            default -> throw new IllegalArgumentException(copies + " copies of a gene; expected 0, 1 or 2");
        };
    }

    private static Outputs solve(Given given, Working working) {
        double p = given.number("frequency");
        double inbreeding = given.number("inbreeding");
        double two = working.line(
                "two copies", of(2, p, inbreeding), "", "{}² × (1 − {}) + {} × {}", p, inbreeding, p, inbreeding);
        double one =
                working.line("one copy", of(1, p, inbreeding), "", "2 × {} × (1 − {}) × (1 − {})", p, p, inbreeding);
        double resist = given.word("gene").equals("dominant")
                ? working.line("resist", two + one, "", "{} + {}", two, one)
                : two;
        return new Outputs().put("resist_share", resist).put("two_share", two).put("one_share", one);
    }
}
