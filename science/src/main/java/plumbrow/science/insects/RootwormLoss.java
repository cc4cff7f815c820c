package plumbrow.science.insects;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Corn yield lost to rootworm larvae.
 *
 *   loss = b·NIS, capped at the whole yield
 *   chance that a control pays = 1 − Φ((C/(V·Y·K) − b·ΔNIS)/σ)
 *
 *   NIS  node injury, 0 to 3 nodes; 3 is the cap of the scale, ΔNIS the difference between two options
 *   b    share of yield lost per node [1/node]; 0.15 seen, 0.10 to 0.18 offered
 *   C    cost of the control [$/ac];  V price [$/bu];  Y yield [bu/ac];  K share of the injury prevented [-]
 *   σ    spread of the loss between fields and seasons [share of yield]; about 0.14 inferred from one published chance
 *
 * For grain, over a whole season. Wet years, lodging and drought move b a lot.
 *
 * Source: Tinsley, Estes & Gray 2013, J. Appl. Entomol. 137:406, 0.15 per node; Mitchell, Gray & Steffey 2002 for the
 * chance that the loss is below the insecticide's cost.
 */
public final class RootwormLoss {
    /** The scale ends at three nodes or more. */
    public static final double HIGHEST_NODE_INJURY = 3;

    public static final Figure FIGURE = Figure.declare("rootworm-loss", Subject.INSECTS)
            .question("How much yield does rootworm injury cost?")
            .input(Input.number(
                    "node_injury",
                    "Node injury of the roots, or its difference between two options",
                    "nodes",
                    Range.closed(0, HIGHEST_NODE_INJURY),
                    "0.5"))
            .input(Input.number("loss_per_node_pct", "Yield lost per node", "%", Range.PERCENT, "15"))
            .output("loss_pct", "Yield lost", "%")
            .formula("loss = b × NIS, at most 100 %")
            .source("[tinsley-2013]: 15 % per node", VERIFIED)
            .validity(
                    "Grain, whole season, 0 to 3 nodes. A loss above 100 % is shown as 100 %; other nodes are refused.")
            .caution(
                    "Fields differ widely: the same injury cost from nothing to twice the mean. Look at the chance too.")
            .example("node_injury=1.0 loss_per_node_pct=15", "loss_pct=15.0", "30 of 200 bu at 1.0 node", COMPUTED)
            .example(
                    "node_injury=1.68 loss_per_node_pct=15",
                    "loss_pct=25.2",
                    "45.36 of 180 bu at 1.68 nodes (untreated mean, Iowa 2000)",
                    COMPUTED)
            .model(RootwormLoss::solve);

    private RootwormLoss() {}

    /** b·NIS as a share of yield, at most 1. */
    public static double share(double nodeInjury, double lossPerNode) {
        return Math.min(nodeInjury * lossPerNode, 1);
    }

    /**
     * The chance that a control pays for itself, the loss being normal around b·ΔNIS with spread σ.
     *
     * @param breakEvenLoss C/(V·Y·K), share of yield
     * @param expectedLoss b·ΔNIS, share of yield
     * @param spread σ, share of yield, more than 0
     */
    public static double chanceOfPaying(double breakEvenLoss, double expectedLoss, double spread) {
        return StandardNormal.below((expectedLoss - breakEvenLoss) / spread);
    }

    private static Outputs solve(Given given, Working working) {
        double nodes = given.number("node_injury");
        double perNode = given.number("loss_per_node_pct");
        double loss = working.line(
                "yield lost", share(nodes, perNode / 100) * 100, "%", "{} nodes × {} % per node", nodes, perNode);
        if (nodes * perNode > 100) {
            working.caution("The product passes 100 %; no more than the whole yield can be lost.");
        }
        return new Outputs().put("loss_pct", loss);
    }
}
