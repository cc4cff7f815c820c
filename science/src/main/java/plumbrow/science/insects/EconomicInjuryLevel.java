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
 * The pest density at which the loss that control prevents equals its cost.
 *
 *   EIL = C / (V·I·D·K)
 *
 *   C  cost of control, product and pass [$/ac];  V price, net of drying and haul where those rise with yield [$/bu]
 *   I  injury per pest [injury units/pest];  D yield lost per unit of injury [bu/ac]
 *   K  share of the injury that control prevents [-], more than 0
 *
 * Where only the product is known, put I·D = yield × share lost per pest. Loss in a straight line, one pest.
 *
 * Source: Pedigo, Hutchins & Higley 1986, Annu. Rev. Entomol. 31:341; NC State, economics of pest control.
 */
public final class EconomicInjuryLevel {
    public static final Figure FIGURE = Figure.declare("economic-injury-level", Subject.INSECTS)
            .question("At how many pests does control pay for itself?")
            .input(number("cost", "Cost of control, product and pass", "$/ac", Range.NOT_NEGATIVE, "15"))
            .input(number("value", "Crop price", "$/bu", Range.POSITIVE, "4"))
            .input(number("injury", "Injury per pest", "injury units/pest", Range.POSITIVE, "1"))
            .input(number("damage", "Yield lost per unit of injury", "bu/ac", Range.POSITIVE, "10.69"))
            .input(number("control_share", "Share of the injury prevented", "", Range.above(0, 1), "0.75"))
            .output("density", "Economic injury level", "pests per sampling unit")
            .formula("density = cost ÷ (value × injury × damage × share prevented)")
            .source("[pedigo-1986]; with one loss per pest as in [ncsu-pest-economics]", VERIFIED)
            .validity("Straight-line loss, one pest, known price. Every divisor must be more than 0.")
            .caution(
                    "A published threshold for the crop, stage and state goes before this number. Published thresholds are never averaged.")
            .example(
                    "cost=15 value=4 injury=1 damage=10.692 control_share=1",
                    "density=.351",
                    "corn borer, 10-leaf, 5.94 % of 180 bu",
                    COMPUTED)
            .example(
                    "cost=15 value=4 injury=1 damage=10.692 control_share=.75",
                    "density=.468",
                    "the same with 75 % control",
                    COMPUTED)
            .example(
                    "cost=20 value=500 injury=0.000125 damage=1 control_share=1",
                    "density=320.0",
                    "800 pests cause 10 % of $500, [ncsu-pest-economics]",
                    VERIFIED)
            .model(EconomicInjuryLevel::solve);

    private EconomicInjuryLevel() {}

    /** C / (V·I·D·K) [pests per sampling unit]. */
    public static double density(double cost, double value, double injury, double damage, double controlShare) {
        return cost / (value * injury * damage * controlShare);
    }

    private static Outputs solve(Given given, Working working) {
        double cost = given.number("cost");
        double value = given.number("value");
        double injury = given.number("injury");
        double damage = given.number("damage");
        double control = given.number("control_share");
        double perPest = working.line(
                "saved per pest controlled",
                value * injury * damage * control,
                "$/ac",
                "{} $/bu × {} × {} bu/ac × {}",
                value,
                injury,
                damage,
                control);
        return new Outputs()
                .put(
                        "density",
                        working.line(
                                "economic injury level",
                                density(cost, value, injury, damage, control),
                                "pests per sampling unit",
                                "{} $/ac ÷ {} $/ac",
                                cost,
                                perPest));
    }
}
