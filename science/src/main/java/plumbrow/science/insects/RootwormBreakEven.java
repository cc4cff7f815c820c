package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The node injury at which a rootworm control pays, and the chance that it does.
 *
 *   ΔNIS* = C/(b·V·Y·K);  P(pays) = 1 − Φ((C/(V·Y·K) − b·ΔNIS)/σ);  symbols as in {@link RootwormLoss}
 *
 * The spread σ of the loss is huge: one published fit puts a mean loss of 11.6 % beside a chance of 32 to 45 % that the
 * loss is less than the insecticide's cost, which implies σ of about 0.14. It is a setting, not a constant.
 *
 * Source: Tinsley, Estes & Gray 2013, J. Appl. Entomol. 137:406; Mitchell, Gray & Steffey 2002,
 * ideas.repec.org/p/ags/tamufp/24020.
 */
public final class RootwormBreakEven {
    private static final Input COST = number("cost_usd_ac", "Cost of the control", "$/ac", Range.NOT_NEGATIVE, "20");
    private static final Input PRICE = number("price_usd_bu", "Crop price", "$/bu", Range.POSITIVE, "5");
    private static final Input YIELD = number("yield_bu_ac", "Yield without injury", "bu/ac", Range.POSITIVE, "200");
    private static final Input PER_NODE = number(
                    "loss_per_node_pct", "Yield lost per node", "%", Range.above(0, 100), "15")
            .orElse("15");
    private static final Input CONTROL = number(
                    "control_share", "Share of the injury prevented", "", Range.above(0, 1), "0.85")
            .orElse("1");

    public static final Figure FIGURE = Figure.declare("rootworm-break-even", Subject.INSECTS)
            .question("At how much node injury does a rootworm control pay?")
            .input(COST)
            .input(PRICE)
            .input(YIELD)
            .input(PER_NODE)
            .input(CONTROL)
            .output("node_injury", "Break-even node injury", "nodes")
            .formula("nodes = cost ÷ (loss per node × price × yield × share prevented)")
            .source("[tinsley-2013]: 15 % per node", VERIFIED)
            .validity("Mean loss in a straight line. Above 3 nodes, the end of the scale, the control never pays.")
            .example(
                    "cost_usd_ac=15 price_usd_bu=4 yield_bu_ac=180",
                    "node_injury=0.139",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "cost_usd_ac=20 price_usd_bu=5 yield_bu_ac=200",
                    "node_injury=0.133",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "cost_usd_ac=25 price_usd_bu=4.50 yield_bu_ac=220",
                    "node_injury=0.168",
                    "independent arithmetic",
                    COMPUTED)
            .model(RootwormBreakEven::solve);

    public static final Figure CHANCE = Figure.declare("rootworm-chance", Subject.INSECTS)
            .question("How likely does a rootworm control pay?")
            .alsoAsked("Does rootworm insecticide or a rootworm trait pay?")
            .input(number(
                    "node_injury",
                    "Node injury expected without it",
                    "nodes",
                    Range.closed(0, RootwormLoss.HIGHEST_NODE_INJURY),
                    "0.8"))
            .input(COST)
            .input(PRICE)
            .input(YIELD)
            .input(PER_NODE)
            .input(CONTROL)
            .input(number(
                    "loss_sd_pct",
                    "Spread of the loss between fields and seasons",
                    "% of yield",
                    Range.above(0, 100),
                    "14"))
            .output("chance", "Chance that it pays", "")
            .output("break_even_loss_pct", "Loss at which it pays", "%")
            .formula("chance = Φ((loss per node × nodes − cost ÷ (price × yield × share prevented)) ÷ spread)")
            .source("[mitchell-2002]; normal spread", PRACTICE)
            .validity(
                    "Loss normal around its mean. The spread is your setting; about 14 % is inferred from one published chance.")
            .example(
                    "node_injury=.8 cost_usd_ac=20 price_usd_bu=5 yield_bu_ac=200 control_share=.85 loss_sd_pct=5",
                    "chance=.973",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "node_injury=.8 cost_usd_ac=20 price_usd_bu=5 yield_bu_ac=200 control_share=.85 loss_sd_pct=10",
                    "chance=.833",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "node_injury=.8 cost_usd_ac=20 price_usd_bu=5 yield_bu_ac=200 control_share=.85 loss_sd_pct=15",
                    "chance=.740",
                    "independent arithmetic",
                    COMPUTED)
            .model(RootwormBreakEven::solveChance);

    private RootwormBreakEven() {}

    private static Outputs solve(Given given, Working working) {
        double cost = given.number("cost_usd_ac");
        double perNode = given.number("loss_per_node_pct");
        double price = given.number("price_usd_bu");
        double yield = given.number("yield_bu_ac");
        double control = given.number("control_share");
        double saved = working.line(
                "saved per node",
                perNode / 100 * price * yield * control,
                "$/ac per node",
                "{} % × {} $/bu × {} bu/ac × {}",
                perNode,
                price,
                yield,
                control);
        double nodes =
                working.line("break-even injury", cost / saved, "nodes", "{} $/ac ÷ {} $/ac per node", cost, saved);
        if (nodes > RootwormLoss.HIGHEST_NODE_INJURY) {
            working.caution("Never pays on the mean: more than the 3 nodes at which the scale ends.");
        }
        return new Outputs().put("node_injury", nodes);
    }

    private static Outputs solveChance(Given given, Working working) {
        double nodes = given.number("node_injury");
        double perNode = given.number("loss_per_node_pct");
        double cost = given.number("cost_usd_ac");
        double price = given.number("price_usd_bu");
        double yield = given.number("yield_bu_ac");
        double control = given.number("control_share");
        double spread = given.number("loss_sd_pct");
        double expected =
                working.line("loss expected", nodes * perNode, "%", "{} nodes × {} % per node", nodes, perNode);
        double pays = working.line(
                "loss at which it pays",
                100 * cost / (price * yield * control),
                "%",
                "100 × {} $/ac ÷ ({} $/bu × {} bu/ac × {})",
                cost,
                price,
                yield,
                control);
        double chance = working.line(
                "chance that it pays",
                RootwormLoss.chanceOfPaying(pays / 100, expected / 100, spread / 100),
                "",
                "Φ(({} − {}) ÷ {})",
                expected,
                pays,
                spread);
        return new Outputs().put("chance", chance).put("break_even_loss_pct", pays);
    }
}
