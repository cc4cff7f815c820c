package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.table;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * A season of passes against weeds that come up in flushes.
 *
 *   left_j = seedlings·share_j·Π over passes (1 − control);  load = Σ weight_j·left_j;  loss = I·load/(1 + I·load/A)
 *
 *   share  of all seedlings [-];  control  of a pass on a flush [%], 0 where it can't reach it
 *   weight  competitive strength by time of emergence [-], as e^{−cT} of {@link HyperbolicLoss}
 *
 * Passes work independently: of two passes of one group on resistant plants the second is to be given 0.
 *
 * Source: product rule (common practice) and hyperbola (Cousens 1985).
 */
public final class WeedCohorts {
    public static final Figure FIGURE = Figure.declare("weed-cohorts", Subject.WEEDS)
            .question("What do these passes leave of weeds that come up in flushes, and what does it cost?")
            .input(number("seedlings_m2", "Seedlings of the season", "plants/m²", Range.NOT_NEGATIVE, "40"))
            .input(list(
                    "shares",
                    "Share of the seedlings in each flush, together 1",
                    "",
                    Range.SHARE,
                    "0.10,0.35,0.35,0.20"))
            .input(list("weights", "Competitive strength of each flush", "", Range.closed(0, 10), "1,1,0.35,0.10"))
            .input(table(
                    "controls_pct",
                    "Control: a row for each pass, a column for each flush",
                    "%",
                    Range.PERCENT,
                    "95,0,0,0;0,90,45,15"))
            .input(Asked.LOSS_PER_PLANT)
            .input(Asked.HIGHEST_LOSS)
            .output("plants_m2", "Plants left", "plants/m²")
            .output("left", "Left of each flush", "plants/m²")
            .output("load_m2", "Left, weighted by competitive strength", "plants/m²")
            .output("loss_pct", "Yield lost", "%")
            .formula(
                    "left = seedlings × share × Π(1 − control); loss = I × Σ weight × left ÷ (1 + I × Σ weight × left ÷ A)")
            .source("Product rule for independent passes; hyperbola of [cousens-1985]", PRACTICE)
            .validity("Shares sum to 1; weights and each row of controls have one number for each flush.")
            .caution(Asked.WIDE_BAND)
            .example(
                    "seedlings_m2=40 shares=.10,.35,.35,.20 weights=1,1,.35,.10 controls_pct=0,0,0,0 i_pct=5 a_pct=60",
                    "plants_m2=40 load_m2=23.7 loss_pct=39.832",
                    "nothing done",
                    COMPUTED)
            .example(
                    "seedlings_m2=40 shares=.10,.35,.35,.20 weights=1,1,.35,.10 controls_pct=95,0,0,0;0,90,45,15 i_pct=5 a_pct=60",
                    "plants_m2=16.1 left=.2,1.4,7.7,6.8 load_m2=4.975 loss_pct=17.585",
                    "burndown and pre",
                    COMPUTED)
            .example(
                    "seedlings_m2=40 shares=.10,.35,.35,.20 weights=1,1,.35,.10 controls_pct=95,0,0,0;70,70,92,0 i_pct=5 a_pct=60",
                    "plants_m2=13.38 load_m2=5.452 loss_pct=18.744",
                    "burndown and post",
                    COMPUTED)
            .example(
                    "seedlings_m2=40 shares=.10,.35,.35,.20 weights=1,1,.35,.10 controls_pct=95,0,0,0;0,90,45,15;70,70,92,0 i_pct=5 a_pct=60",
                    "plants_m2=7.896 load_m2=1.3756 loss_pct=6.171",
                    "burndown, pre and post",
                    COMPUTED)
            .example(
                    "seedlings_m2=40 shares=.10,.35,.35,.20 weights=1,1,.35,.10"
                            + " controls_pct=95,0,0,0;0,90,45,15;70,70,92,0;0,0,0,75 i_pct=5 a_pct=60",
                    "plants_m2=2.796 left=.06,.42,.616,1.7 load_m2=.8656 loss_pct=4.037",
                    "and a residual in the post",
                    COMPUTED)
            .model(WeedCohorts::solve);

    private WeedCohorts() {}

    private static Outputs solve(Given given, Working working) {
        double[] shares = given.list("shares");
        double[] weights = given.list("weights");
        double[][] controls = given.table("controls_pct");
        double sum = 0;
        for (double share : shares) {
            sum += share;
        }
        if (Math.abs(sum - 1) > 1e-6) {
            throw given.refuse("shares", "shares that sum to 1");
        }
        if (weights.length != shares.length) {
            throw given.refuse("weights", "as many numbers as shares has (" + shares.length + ")");
        }
        double seedlings = given.number("seedlings_m2");
        double[] left = new double[shares.length];
        double plants = 0;
        double load = 0;
        for (int j = 0; j < shares.length; j++) {
            double survive = 1;
            for (double[] pass : controls) {
                if (pass.length != shares.length) {
                    throw given.refuse("controls_pct", "rows of " + shares.length + " numbers, one for each flush");
                }
                survive *= 1 - pass[j] / 100;
            }
            left[j] = working.line(
                    "left of flush " + (j + 1),
                    seedlings * shares[j] * survive,
                    "",
                    "{} × {} × {}",
                    seedlings,
                    shares[j],
                    survive);
            plants += left[j];
            load += weights[j] * left[j];
            working.line("its weight in the loss", weights[j] * left[j], "", "{} × {}", weights[j], left[j]);
        }
        double perPlant = given.number("i_pct");
        double competition = working.line("competitive load", perPlant * load, "%", "{} × {}", perPlant, load);
        return new Outputs()
                .put("plants_m2", plants)
                .put("left", left)
                .put("load_m2", load)
                .put("loss_pct", Asked.showLoss(working, competition, given.number("a_pct")));
    }
}
