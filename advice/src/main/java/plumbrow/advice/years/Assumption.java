package plumbrow.advice.years;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.outlook.Law;
import plumbrow.science.figure.Numbers;

/**
 * What is taken for a quantity of the years that a season's sheets don't hold.
 *
 * @param power whether the law is of the power of ten, as for a frequency of 1 in a million
 */
public record Assumption(String label, String unit, Law law, boolean power, String source) {

    /** Frequency of a copy that resists a herbicide, where nothing is known of the field. */
    static final Assumption HERBICIDE_GENE = new Assumption(
            "resistant copies of a herbicide gene at the start",
            "share",
            new Law.Pert(-7, -6, -5),
            true,
            "Diggle, Neve & Smith 2003 take 1 in a million; ten times less and more: common practice, no source");

    static final Assumption ONE_COPY = new Assumption(
            "fold by which one copy lowers the odds of control",
            "",
            new Law.Pert(1.5, 2.5, 4),
            true,
            "ED50 ten times as high at a slope of 2.5: common practice, no source; two copies the square of it");

    static final Assumption COST = new Assumption(
            "seed that two copies of a herbicide gene cost",
            "share",
            new Law.Pert(0, .03, .15),
            false,
            "common practice, no source; one copy half of it");

    static final Assumption MUTATION = new Assumption(
            "new resistant copies a generation",
            "share",
            new Law.Fixed(1e-8),
            false,
            "value from memory; Maxwell et al. 1990 take 1e-6");

    static final Assumption INSECT_GENE = new Assumption(
            "resistant copies of a trait gene at the start",
            "share",
            new Law.Pert(-3, -2.5, -2),
            true,
            "between the two frequencies of the checks, 0.001 and 0.01: common practice, no source");

    static final Assumption INSECT_COST = new Assumption(
            "fitness that two copies of a trait gene cost on other plants",
            "share",
            new Law.Pert(0, .05, .3),
            false,
            "common practice, no source; one copy a tenth of it");

    static final Assumption MIXING = new Assumption(
            "moths and beetles that mate anywhere in a field with a block refuge",
            "share",
            new Law.Pert(.5, .85, 1),
            false,
            "common practice, no source");

    static final Assumption MOVING = new Assumption(
            "larvae that leave their first plant in a blend",
            "share",
            new Law.Pert(.1, .3, .5),
            false,
            "insects-and-refuge reference 7.3, a teaching model; movers take half the dose");

    /** The law as a person reads it: "0.03, from 0 to 0.15 share". */
    public String words() {
        String text = law instanceof Law.Pert pert
                ? value(pert.likely()) + ", from " + value(pert.low()) + " to " + value(pert.high())
                : law instanceof Law.Fixed fixed ? value(fixed.value()) : "drawn";
        return unit.isEmpty() ? text : text + " (" + unit + ")";
    }

    private String value(double number) {
        double value = power ? Math.pow(10, number) : number;
        if (value > 0 && value < .001) {
            return "1 in " + Numbers.fixed(1 / value, 0);
        }
        return Numbers.plain(
                value < 1
                        ? value
                        : new BigDecimal(value).round(new MathContext(2)).doubleValue());
    }

    /** How dominant resistance to a trait is. */
    static Assumption dominance(String insect) {
        boolean borer = insect.equals("European corn borer");
        return new Assumption(
                "dominance of resistance to a trait in " + insect,
                "share",
                borer ? new Law.Pert(0, .02, .1) : new Law.Pert(.05, .25, .6),
                false,
                borer
                        ? "high dose: nearly recessive; common practice, no source"
                        : "moderate dose, 0.25 in the reference's checks; common practice, no source");
    }

    /** Those of every field. */
    static List<Assumption> ofWeeds() {
        return List.of(HERBICIDE_GENE, ONE_COPY, COST, MUTATION);
    }

    static List<Assumption> ofInsects(List<String> insects) {
        return Stream.concat(
                        Stream.of(INSECT_GENE, INSECT_COST, MIXING, MOVING),
                        insects.stream().map(Assumption::dominance))
                .toList();
    }
}
