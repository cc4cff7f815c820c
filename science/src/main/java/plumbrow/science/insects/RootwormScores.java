package plumbrow.science.insects;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Rootworm scores: old ratings as nodes, what dug roots say, and silks clipped by beetles.
 *
 *   nodes = rating − 3, for the old ratings 4, 5 and 6 only; nothing in between is converted
 *   dug roots: 0.25 node or less desirable; above 0.5 change the plan, on a pyramid suspect resistance (memory); above 1 on
 *   one toxin suspect resistance
 *
 * Source: Oleson et al. 2005 at ent.iastate.edu/pest/rootworm/nodeinjury; ipm.iastate.edu 2003 (0.25); agprofessional.com
 * (0.5); St. Clair 2020, toaa106 (1 node); farms.com 94345 (silks).
 */
public final class RootwormScores {
    private static final double MOST_NODES = 3;

    public static final Figure RATING = Figure.declare("root-rating", Subject.INSECTS)
            .question("How many nodes of injury is an old root rating?")
            .input(number("rating", "Old rating, 1 to 6", "", Range.closed(1, 6), "5"))
            .output("nodes", "Node injury", "nodes")
            .formula("nodes = rating − 3, for 4, 5 and 6")
            .source("[oleson-2005]", VERIFIED)
            .validity("Only 4, 5 and 6 convert. Below 4 the old scale counts scars and has no equal in nodes: refused.")
            .example("rating=5", "nodes=2.0", "[oleson-2005]", VERIFIED)
            .example("rating=4", "nodes=1.0", "[oleson-2005]", VERIFIED)
            .example("rating=6", "nodes=3.0", "[oleson-2005]", VERIFIED)
            .model(RootwormScores::solveRating);

    public static final Figure DUG = Figure.declare("dug-roots", Subject.INSECTS)
            .question("What do the dug roots say of this field's rootworm control?")
            .input(list(
                    "nodes", "Node injury of each dug root", "nodes", Range.closed(0, MOST_NODES), "0.1,0.75,1.5,0.5"))
            .input(word(
                    "control",
                    "What stood against the rootworm",
                    List.of("none", "insecticide", "one-toxin", "pyramid"),
                    "one-toxin"))
            .output("mean_nodes", "Mean injury", "nodes")
            .output("verdict", "In words", "")
            .formula(
                    "mean of the roots; 0.25 or less desirable, above 0.5 change the plan, above 1 on one toxin suspect resistance")
            .source("[iowa-rootworm-2003]; [agprofessional-rootworm]; [st-clair-2020]", VERIFIED)
            .validity("0.5 on a pyramid: value from memory. Dig 10 to 14 days after hatch, five roots in three places.")
            .caution(
                    "A low score where few eggs were laid proves nothing for the product: compare with an untreated strip.")
            .example(
                    "nodes=0.1,0.75,1.5,0.5 control=one-toxin",
                    "mean_nodes=.7125 verdict=change the plan",
                    "[agprofessional-rootworm]: above 0.5",
                    VERIFIED)
            .example("nodes=.2,.1 control=none", "verdict=desirable", "[iowa-rootworm-2003]: 0.25 or less", VERIFIED)
            .example(
                    "nodes=1.5,1.2 control=one-toxin",
                    "verdict=unexpected injury: suspect resistance",
                    "[st-clair-2020]: above one node",
                    VERIFIED)
            .example(
                    "nodes=.6,.7 control=pyramid",
                    "verdict=unexpected injury: suspect resistance",
                    "value from memory",
                    MEMORY)
            .example("nodes=.3,.4 control=insecticide", "verdict=watch", "between the two limits", COMPUTED)
            .model(RootwormScores::solveDug);

    public static final Figure SILKS = Figure.declare("silk-clipping", Subject.INSECTS)
            .question("Do beetles clip silks so that corn must be treated?")
            .input(number("beetles_ear", "Beetles on an ear", "beetles/ear", Range.NOT_NEGATIVE, "6"))
            .input(number("silk_in", "Silk left", "in", Range.closed(0, 20), "0.4"))
            .input(number("shed_pct", "Plants that shed pollen or have shed it", "%", Range.PERCENT, "40"))
            .output("of_threshold", "Beetles over the threshold", "")
            .output("verdict", "In words", "")
            .formula("treat from 5 beetles an ear with silks cut below half an inch, until half of the pollen is shed")
            .source("[farms-94345]", VERIFIED)
            .validity(
                    "The source prints 5 to 10 beetles and 25 to 50 % of pollen shed: 5 and 50 are taken. Never after pollination.")
            .caution("Silk grows on: silk of half an inch or more is enough for pollen.")
            .example(
                    "beetles_ear=6 silk_in=.4 shed_pct=40", "of_threshold=1.2 verdict=treat", "[farms-94345]", VERIFIED)
            .example(
                    "beetles_ear=6 silk_in=.4 shed_pct=80",
                    "verdict=too late: pollination is over",
                    "[farms-94345]",
                    VERIFIED)
            .example("beetles_ear=6 silk_in=1 shed_pct=40", "verdict=do not treat", "[farms-94345]", VERIFIED)
            .model(RootwormScores::solveSilks);

    private RootwormScores() {}

    private static Outputs solveRating(Given given, Working working) {
        double rating = given.number("rating");
        if (rating != 4 && rating != 5 && rating != 6) {
            throw given.refuse("rating", "4, 5 or 6: the other old ratings have no equal in nodes");
        }
        return new Outputs().put("nodes", working.line("nodes", rating - 3, "nodes", "{} − 3", rating));
    }

    private static Outputs solveDug(Given given, Working working) {
        double[] nodes = given.list("nodes");
        double mean = working.step(
                "mean injury",
                "(" + Numbers.terms(nodes) + ") ÷ " + nodes.length,
                Arrays.stream(nodes).sum() / nodes.length,
                "nodes");
        return new Outputs().put("mean_nodes", mean).put("verdict", verdict(mean, given.word("control")));
    }

    private static String verdict(double mean, String control) {
        if ((mean > 1 && control.equals("one-toxin")) || (mean > 0.5 && control.equals("pyramid"))) {
            return "unexpected injury: suspect resistance";
        }
        if (mean > 0.5) {
            return "change the plan";
        }
        return mean <= 0.25 ? "desirable" : "watch";
    }

    private static Outputs solveSilks(Given given, Working working) {
        double beetles = given.number("beetles_ear");
        double of = working.line("beetles over the threshold", beetles / 5, "", "{} ÷ 5", beetles);
        boolean clipped = of >= 1 && given.number("silk_in") < 0.5;
        String verdict =
                !clipped ? "do not treat" : given.number("shed_pct") > 50 ? "too late: pollination is over" : "treat";
        return new Outputs().put("of_threshold", of).put("verdict", verdict);
    }
}
