package plumbrow.science.insects;

import static plumbrow.science.figure.Input.list;
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
 * Soybean aphids carried by a plant over the season, and the yield they cost.
 *
 *   CAD = Σ (x_{i−1} + x_i)/2·Δt;  loss = 6.88 % per 10,000 CAD
 *
 *   x aphids per plant on each day of counting;  Δt days between counts
 *
 * Source: Ragsdale et al. 2007, J. Econ. Entomol. 100:1258 (value from memory).
 */
public final class AphidDays {
    /** Yield lost per aphid day [%]. */
    private static final double PCT_PER_APHID_DAY = 6.88 / 10_000;

    public static final Figure FIGURE = Figure.declare("aphid-days", Subject.INSECTS)
            .question("How many aphid days has a plant carried, and what do they cost?")
            .input(list("days", "Days of the counts, rising", "d", Range.closed(0, 366), "0,7,14,21,28"))
            .input(list(
                    "counts",
                    "Aphids per plant on each of them",
                    "aphids/plant",
                    Range.NOT_NEGATIVE,
                    "12,60,210,640,300"))
            .output("aphid_days", "Aphid days up to the last count", "aphid days")
            .output("running", "Aphid days up to each count", "aphid days")
            .output("loss_pct", "Yield lost", "%")
            .formula("aphid days = Σ (count before + count) ÷ 2 × days between; loss = 6.88 % per 10,000")
            .source("[ragsdale-2007]", MEMORY)
            .validity("At least two counts on rising days, lists of one length. A loss above 100 % is shown as 100 %.")
            .example(
                    "days=0,7,14,21,28 counts=12,60,210,640,300",
                    "aphid_days=7462 running=0,252,1197,4172,7462 loss_pct=5.13",
                    "independent arithmetic",
                    COMPUTED)
            .model(AphidDays::solve);

    private AphidDays() {}

    private static Outputs solve(Given given, Working working) {
        double[] days = given.list("days");
        double[] counts = given.list("counts");
        if (days.length < 2) {
            throw given.refuse("days", "at least two days of counting");
        }
        if (counts.length != days.length) {
            throw given.refuse("counts", "as many numbers as days has (" + days.length + ")");
        }
        double[] running = new double[days.length];
        for (int i = 1; i < days.length; i++) {
            double between = days[i] - days[i - 1];
            if (between <= 0) {
                throw given.refuse("days", "days that rise from count to count");
            }
            running[i] = working.line(
                    "aphid days to day " + Numbers.plain(days[i]),
                    running[i - 1] + (counts[i - 1] + counts[i]) / 2 * between,
                    "aphid days",
                    "{} + ({} + {}) ÷ 2 × {} d",
                    running[i - 1],
                    counts[i - 1],
                    counts[i],
                    between);
        }
        double total = running[running.length - 1];
        double loss = working.line(
                "yield lost", Math.min(total * PCT_PER_APHID_DAY, 100), "%", "{} aphid days × 6.88 % ÷ 10,000", total);
        return new Outputs().put("aphid_days", total).put("running", running).put("loss_pct", loss);
    }
}
