package plumbrow.science.insects;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Node injury after several tactics, and as a mean of refuge and trait plants in a blend.
 *
 *   after = base·Π(1 − e_j);  blend = f·NIS_refuge + (1−f)·NIS_trait
 *
 * Source: product rule of {@link CombinedControl}; weighted mean named by Tinsley et al. 2014, doi 10.1111/jen.12134.
 */
public final class NodeInjury {
    private static final Range NODES = Range.closed(0, RootwormLoss.HIGHEST_NODE_INJURY);

    public static final Figure TACTICS = Figure.declare("combined-tactics", Subject.INSECTS)
            .question("How much injury do several tactics leave together?")
            .input(number("base_injury", "Injury with none of them", "nodes", NODES, "1.68"))
            .input(list("controls", "Share of the injury that each removes alone", "", Range.SHARE, "0.90,0.75"))
            .output("injury", "Injury left", "nodes")
            .output("control", "Share removed by all", "")
            .formula("left = base × (1 − e₁) × (1 − e₂) × …")
            .source("Product rule for independent tactics", PRACTICE)
            .validity("Best case: tactics that work independently. 0 to 3 nodes, shares 0 to 1.")
            .caution(
                    "Soil insecticide over rootworm-trait seed rarely improved roots and never yield consistently in trials (Tinsley 2014; Petzold-Maxwell 2013): give it a small share unless resistance is known.")
            .example(
                    "base_injury=1.68 controls=.90",
                    "injury=0.168",
                    "trait alone; base: Iowa 2000 untreated mean",
                    COMPUTED)
            .example("base_injury=1.68 controls=.75", "injury=0.420", "insecticide alone", COMPUTED)
            .example("base_injury=1.68 controls=.90,.75", "injury=0.042 control=0.975", "both", COMPUTED)
            .model(NodeInjury::solveTactics);

    public static final Figure BLEND = Figure.declare("blend-root-score", Subject.INSECTS)
            .question("What is the mean root score of a seed blend?")
            .input(number("refuge_share", "Share of refuge plants", "", Range.SHARE, "0.05"))
            .input(number("refuge_injury", "Injury of the refuge plants", "nodes", NODES, "1.6"))
            .input(number("trait_injury", "Injury of the trait plants", "nodes", NODES, "0.12"))
            .output("injury", "Mean injury", "nodes")
            .formula("mean = refuge share × refuge injury + (1 − refuge share) × trait injury")
            .source("Weighted mean as in [tinsley-2014]", VERIFIED)
            .validity("Larvae that move between plants are not in it. 0 to 3 nodes.")
            .example(
                    "refuge_share=.05 refuge_injury=1.6 trait_injury=.12",
                    "injury=0.194",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.20 refuge_injury=1.6 trait_injury=.12",
                    "injury=0.416",
                    "independent arithmetic",
                    COMPUTED)
            .model(NodeInjury::solveBlend);

    private NodeInjury() {}

    private static Outputs solveTactics(Given given, Working working) {
        double left = given.number("base_injury");
        double[] controls = given.list("controls");
        for (int i = 0; i < controls.length; i++) {
            left = working.line(
                    "injury after tactic " + (i + 1),
                    left * (1 - controls[i]),
                    "nodes",
                    "{} × (1 − {})",
                    left,
                    controls[i]);
        }
        return new Outputs().put("injury", left).put("control", CombinedControl.of(controls));
    }

    private static Outputs solveBlend(Given given, Working working) {
        double share = given.number("refuge_share");
        double refuge = given.number("refuge_injury");
        double trait = given.number("trait_injury");
        return new Outputs()
                .put(
                        "injury",
                        working.line(
                                "mean injury",
                                share * refuge + (1 - share) * trait,
                                "nodes",
                                "{} × {} + (1 − {}) × {}",
                                share,
                                refuge,
                                share,
                                trait));
    }
}
