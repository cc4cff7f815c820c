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
 * Acres of refuge owed, as a share of all the corn.
 *
 *   R = f·T;  trait = T − R
 *
 * The other reading, refuge as a share of the trait acres, gives f/(1+f)·T: 16.7 % of the corn for "20 %". It is shown
 * beside it and used only where the grower guide says so. Refuge is rounded up, never down.
 *
 * Source: entomology.ca.uky.edu/ef128 (share of total corn) and ef147 (share of trait corn).
 */
public final class RefugeAcres {
    public static final Figure FIGURE = Figure.declare("refuge-acres", Subject.INSECTS)
            .question("How many acres of refuge are owed?")
            .input(number("field_acres", "All the corn, trait and refuge together", "ac", Range.POSITIVE, "160"))
            .input(number("refuge_pct", "Refuge, as a share of all the corn", "%", Range.PERCENT, "20"))
            .output("refuge_acres", "Refuge", "ac")
            .output("trait_acres", "Trait corn", "ac")
            .output("refuge_acres_if_share_of_trait", "Refuge where the guide counts a share of the trait acres", "ac")
            .formula("refuge = share × all the corn; trait = the rest")
            .source("[kentucky-ef128]: up to 80 % trait corn", VERIFIED)
            .validity("0 to 100 % of all the corn. The answer is not rounded: round the refuge up to whole passes.")
            .caution(
                    "The bag tag and the grower guide set the percentage and the placement; confirm them for this hybrid and county.")
            .example(
                    "field_acres=160 refuge_pct=20",
                    "refuge_acres=32.0 trait_acres=128.0 refuge_acres_if_share_of_trait=26.7",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "field_acres=480 refuge_pct=50",
                    "refuge_acres=240.0 refuge_acres_if_share_of_trait=160.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "field_acres=74.5 refuge_pct=20",
                    "refuge_acres=14.9 refuge_acres_if_share_of_trait=12.4",
                    "independent arithmetic",
                    COMPUTED)
            .model(RefugeAcres::solve);

    private RefugeAcres() {}

    /** f·T [ac]. */
    public static double acres(double cornAcres, double refugeShare) {
        return cornAcres * refugeShare;
    }

    /** f/(1+f)·T [ac], where the guide counts the refuge as a share of the trait acres. */
    public static double acresIfShareOfTrait(double cornAcres, double refugeShare) {
        return cornAcres * refugeShare / (1 + refugeShare);
    }

    private static Outputs solve(Given given, Working working) {
        double corn = given.number("field_acres");
        double pct = given.number("refuge_pct");
        double refuge = working.line("refuge", acres(corn, pct / 100), "ac", "{} ac × {} %", corn, pct);
        double trait = working.line("trait corn", corn - refuge, "ac", "{} ac − {} ac", corn, refuge);
        double other = working.line(
                "refuge, if a share of the trait acres",
                acresIfShareOfTrait(corn, pct / 100),
                "ac",
                "{} ac × {} % ÷ (100 % + {} %)",
                corn,
                pct,
                pct);
        return new Outputs()
                .put("refuge_acres", refuge)
                .put("trait_acres", trait)
                .put("refuge_acres_if_share_of_trait", other);
    }
}
