package plumbrow.advice.years;

import java.math.BigDecimal;
import java.math.MathContext;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.science.figure.Numbers;

/**
 * What is taken for a quantity of the years that a season's sheets don't hold.
 *
 * @param power whether the distribution is of the power of ten, as for a frequency of 1 in a million
 */
public record Assumption(String label, String unit, Distribution distribution, boolean power, String source) {

    private static final String BORER = "European corn borer";

    /** Frequency of a copy that resists a herbicide, where nothing is known of the field. */
    static final Assumption HERBICIDE_GENE = new Assumption(
            "resistance-allele frequency of a herbicide at the start",
            "share",
            new Distribution.Pert(-8, -6, -4),
            true,
            "Diggle, Neve & Smith 2003 take 1 in a million; a hundred times less and more: common practice, no source");

    static final Assumption ONE_COPY = new Assumption(
            "fold by which one copy lowers the odds of control",
            "",
            new Distribution.Pert(.5, 2.5, 4),
            true,
            "ED50 ten times as high at a slope of 2.5: common practice, no source; two copies the square of it");

    static final Assumption COST = new Assumption(
            "seed that two copies of a herbicide gene cost",
            "share",
            new Distribution.Pert(0, .03, .3),
            false,
            "common practice, no source");

    static final Assumption COST_OF_ONE_COPY = new Assumption(
            "part of that cost that one copy bears",
            "share",
            new Distribution.Pert(0, .5, 1),
            false,
            "common practice, no source");

    static final Assumption MUTATION = new Assumption(
            "new resistance alleles a generation",
            "share",
            new Distribution.Pert(-9, -8, -6),
            true,
            "value from memory; Maxwell et al. 1990 take 1 in a million");

    static final Assumption STAYS = new Assumption(
            "part of the spread of control by sprays and of insect pressure that stays with the field from year to year",
            "share",
            new Distribution.Pert(0, .5, 1),
            false,
            "trials differ between fields and between years, nobody here says by how much: common practice, no source");

    static final Assumption YIELD_STAYS = new Assumption(
            "part of the spread of attainable yield that is doubt about what the field brings on average",
            "share",
            new Distribution.Pert(0, .1, .5),
            false,
            "a mean known to a third of what years differ by would be 0.1: common practice, no source");

    static final Assumption AFTER_BREAK = new Assumption(
            "pressure of insects whose eggs wait in the field, in the first year after another crop",
            "share of that in continuous crop",
            new Distribution.Pert(0, .1, .4),
            false,
            "common practice, no source");

    static final Assumption INSECT_COST = new Assumption(
            "fitness that two copies of a trait gene cost on other plants",
            "share",
            new Distribution.Pert(0, .05, .5),
            false,
            "common practice, no source");

    static final Assumption INSECT_COST_OF_ONE_COPY = new Assumption(
            "part of a trait gene's cost that one copy bears",
            "share",
            new Distribution.Pert(0, .1, .5),
            false,
            "common practice, no source");

    static final Assumption MIXING = new Assumption(
            "moths and beetles that mate anywhere in a field with a block refuge",
            "share",
            new Distribution.Pert(.2, .8, 1),
            false,
            "common practice, no source");

    static final Assumption MOVING = new Assumption(
            "larvae that leave their first plant in a blend",
            "share",
            new Distribution.Pert(.05, .3, .7),
            false,
            "insects-and-refuge reference 7.3, a teaching model: no source");

    static final Assumption DOSE = new Assumption(
            "dose that a larva takes from the plant it leaves",
            "share",
            new Distribution.Pert(.1, .5, .9),
            false,
            "insects-and-refuge reference 7.3, a teaching model: no source");

    /** The distribution as a person reads it: "0.03, from 0 to 0.15 share". */
    public String words() {
        String text = distribution instanceof Distribution.Pert pert
                ? value(pert.likely()) + ", from " + value(pert.low()) + " to " + value(pert.high())
                : distribution instanceof Distribution.Fixed fixed ? value(fixed.value()) : "drawn";
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
        boolean borer = insect.equals(BORER);
        return new Assumption(
                "dominance of resistance to a trait in " + insect,
                "share",
                borer ? new Distribution.Pert(0, .02, .3) : new Distribution.Pert(.05, .4, 1),
                false,
                borer
                        ? "high dose: nearly recessive; common practice, no source"
                        : "moderate dose, so not recessive; how much is not known: common practice, no source. Drawn so wide"
                                + " that the failures reported of one rootworm trait after three to seven seasons lie within"
                                + " (Gassmann et al. 2011)");
    }

    /** How common a copy that resists a trait is before it is used. */
    static Assumption insectGene(String insect) {
        boolean borer = insect.equals(BORER);
        return new Assumption(
                "resistance-allele frequency of a trait at the start in " + insect,
                "share",
                borer ? new Distribution.Pert(-6, -4, -3) : new Distribution.Pert(-4, -2, -1),
                true,
                borer
                        ? "below 4 in 10,000 where it was looked for in the Corn Belt (Andow et al. 2000, value from memory)"
                        : "not measured before use; common practice, no source");
    }
}
