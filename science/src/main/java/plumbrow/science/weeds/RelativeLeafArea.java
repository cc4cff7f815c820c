package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Yield loss from the share of leaf area that is weed, soon after the crop is up.
 *
 *   one species YL = 100·q·Lw/(1 + (q/m − 1)·Lw);  several YL = 100·Σ q_i·Lw_i/(1 + Σ (q_i − 1)·Lw_i)
 *
 *   Lw  leaf area of the weed over that of weed and crop [-];  q  relative damage [-], more than 0;  m  highest loss [-]
 *
 * One curve serves many densities and emergence times.
 *
 * Source: Kropff & Spitters 1991, Weed Res. 31:97 (equation from memory).
 */
public final class RelativeLeafArea {
    public static final Figure FIGURE = Figure.declare("relative-leaf-area", Subject.WEEDS)
            .question("What yield is lost when this share of the leaves is weed?")
            .input(list("leaf_shares", "Leaf area of each species over all leaf area", "", Range.SHARE, "0.1,0.2"))
            .input(list("q", "Relative damage of each species", "", Range.above(0, 1000), "2,0.7"))
            .input(number("highest_share", "Highest loss, for one species only", "", Range.above(0, 1), "0.8")
                    .orElse("1"))
            .output("loss_pct", "Yield lost", "%")
            .formula("loss = 100 × Σ q × L ÷ (1 + Σ (q − 1) × L); one species 100 × q × L ÷ (1 + (q ÷ m − 1) × L)")
            .source("[kropff-spitters-1991]", MEMORY)
            .validity(
                    "Soon after the crop is up, shares together at most 1. With several species the highest loss is the whole yield.")
            .caution(Asked.WIDE_BAND)
            .example("leaf_shares=.2 q=2", "loss_pct=33.3333", "independent arithmetic", COMPUTED)
            .example("leaf_shares=.2 q=2 highest_share=.8", "loss_pct=30.7692", "independent arithmetic", COMPUTED)
            .example("leaf_shares=.1,.2 q=2,.7", "loss_pct=32.6923", "independent arithmetic", COMPUTED)
            .model(RelativeLeafArea::solve);

    private RelativeLeafArea() {}

    private static Outputs solve(Given given, Working working) {
        double[] shares = given.list("leaf_shares");
        double[] q = given.list("q");
        double highest = given.number("highest_share");
        if (q.length != shares.length) {
            throw given.refuse("q", "as many numbers as leaf_shares has (" + shares.length + ")");
        }
        if (shares.length > 1 && highest < 1) {
            throw given.refuse("highest_share", "1, or a single species");
        }
        double load = 0;
        double bend = 0;
        double sum = 0;
        for (int i = 0; i < q.length; i++) {
            load += working.line("damage of species " + (i + 1), q[i] * shares[i], "", "{} × {}", q[i], shares[i]);
            bend += working.line(
                    "bend of species " + (i + 1),
                    (q[i] / highest - 1) * shares[i],
                    "",
                    "({} ÷ {} − 1) × {}",
                    q[i],
                    highest,
                    shares[i]);
            sum += shares[i];
        }
        if (sum > 1) {
            throw given.refuse(
                    "leaf_shares", "shares that come to 1 at most (these come to " + Numbers.plain(sum) + ")");
        }
        return new Outputs()
                .put(
                        "loss_pct",
                        working.line("yield lost", 100 * load / (1 + bend), "%", "100 × {} ÷ (1 + {})", load, bend));
    }
}
