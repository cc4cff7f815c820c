package plumbrow.science.trials;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import java.util.Map;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Subject;

/** Critical values, trials with a plot lost, curves: values from outside, worked with scipy and R. */
public final class TrialChecks {
    /** Rice of Gomez & Gomez with block 2 at 100 kg lost and its place taken by Yates's value. */
    private static final String RICE_LOST =
            "5113,5346,5272,5164,4804,5254;5398,5952,5713,5264.8667,4848,4542;5307,4719,5483,4986,4432,4919;4678,4264,4749,4410,4748,4098";

    private TrialChecks() {}

    public static List<Check> all() {
        CheckList checks = CheckList.of(Subject.TRIALS);
        criticalValues(checks);
        blocks(checks);
        replicates(checks);
        ryegrass(checks);
        return checks.all();
    }

    private static void criticalValues(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .value("t at .975, 3 degrees of freedom", "3.1824", () -> StudentT.quantile(.975, 3))
                .value("t at .975, 5", "2.5706", () -> StudentT.quantile(.975, 5))
                .value("t at .975, 9", "2.2622", () -> StudentT.quantile(.975, 9))
                .value("t at .975, 15", "2.1314", () -> StudentT.quantile(.975, 15))
                .value("t at .975, 29", "2.0452", () -> StudentT.quantile(.975, 29))
                .value("F at .95, 5 and 15", "2.9013", () -> FisherF.quantile(.95, 5, 15))
                .value("F at .95, 3 and 15", "3.2874", () -> FisherF.quantile(.95, 3, 15))
                .value("q at .95, 6 means, 15", "4.5947", () -> ManyMeans.honestRange(.95, 6, 15))
                .value(
                        "d against a control at .95, 2 treatments, 6",
                        "2.863",
                        () -> ManyMeans.againstControl(.95, 2, 6))
                .near("d, 3 treatments, 9", "2.814", .003, () -> ManyMeans.againstControl(.95, 3, 9))
                .near("d, 3 treatments, 12", "2.684", .003, () -> ManyMeans.againstControl(.95, 3, 12))
                .near("d, 5 treatments, 15", "2.815", .003, () -> ManyMeans.againstControl(.95, 5, 15));
    }

    private static void blocks(CheckList checks) {
        checks.from("rice against 25 kg, numeric", COMPUTED)
                .near("adjusted chance of 50 kg", ".9995", .001, () -> againstTheControl(5070.25))
                .near("adjusted chance of 75 kg", ".9011", .001, () -> againstTheControl(5304.25))
                .near("adjusted chance of 100 kg", ".6607", .001, () -> againstTheControl(4847.75))
                .near("adjusted chance of 125 kg", ".3087", .001, () -> againstTheControl(4708.00))
                .near("adjusted chance of 150 kg", ".2996", .001, () -> againstTheControl(4703.25))
                .from("[gomez-1984], rice: the book's table", MEMORY)
                .figure(
                        "block-anova",
                        "yields=" + BlockTable.RICE
                                + " | ss_block=1944361 ss_treatment=1198331 ss_error=1658376 f=2.17 cv_pct=6.7")
                .from("a lost plot filled by Yates's value", COMPUTED)
                .figure("block-anova", "yields=" + RICE_LOST + " | ss_error=1540725.99")
                .near(
                        "treatment squares with the lost plot, less their bias of 551.84",
                        "1139954.21",
                        .02,
                        () -> answer("yields", RICE_LOST).number("ss_treatment") - 551.84)
                .from("barley of [immer-1934]", COMPUTED)
                .value("standard error of the 30 differences", "4.78742", () -> barley().number("standard_error"))
                .value("chance above 8", ".94544", () -> barley().number("chance_above_break_even"))
                .from("oats of [yates-1935], with R", COMPUTED)
                .near(
                        "chance of F for nitrogen",
                        "2.5e-12",
                        5e-14,
                        () -> SplitPlot.FIGURE
                                .answer(SplitPlot.FIGURE.examples().get(0).inputs())
                                .number("p_inside"))
                .from("[robma-vignette], trials of BCG", VERIFIED)
                .value(
                        "Q",
                        "152.23",
                        () -> RandomEffects.FIGURE
                                .answer(RandomEffects.FIGURE.examples().get(3).inputs())
                                .number("q"));
    }

    private static void replicates(CheckList checks) {
        checks.from("[r-power-t-test], its help", MEMORY)
                .value(
                        "plots a group, difference 1, spread 1, power .9",
                        "22.02",
                        () -> ReplicatesNeeded.exactOfTwoGroups(1, .05, .9))
                .from("independent arithmetic", COMPUTED)
                .value(
                        "rough plots a treatment for 5 % at CV 6 %",
                        "22.6", () -> 2 * ReplicatesNeeded.firstGuess(5 / 6.0, .05, .8))
                .value(
                        "rough plots a treatment for 5 % at CV 10 %",
                        "62.8", () -> 2 * ReplicatesNeeded.firstGuess(5 / 10.0, .05, .8));
    }

    private static void ryegrass(CheckList checks) {
        checks.from("[drc], reference output print.summary (observed Hessian), to 2 %", VERIFIED)
                .near("standard error of the slope", ".46506", .0093, () -> fit("slope_b_se"))
                .near("standard error of the lower limit", ".21219", .0042, () -> fit("lower_c_se"))
                .near("standard error of the upper limit", ".18857", .0038, () -> fit("upper_d_se"))
                .near("standard error of the half dose", ".18573", .0037, () -> fit("ed50_e_se"))
                .from("the curve of [drc]", COMPUTED)
                .value("left squares", "5.400215", () -> fit("residual_se") * fit("residual_se") * 20)
                .value("fitted at 0 mM", "7.79296", () -> fitted(0))
                .value("fitted at 1 mM", "7.54112", () -> fitted(1))
                .value("fitted at 2 mM", "6.18516", () -> fitted(2))
                .value("fitted at 5 mM", "1.85233", () -> fitted(5))
                .value("fitted at 10 mM", ".68888", () -> fitted(10))
                .value("fitted at 30 mM", ".48947", () -> fitted(30))
                .from("a web page's fit of the ryegrass of [drc], its address not kept", VERIFIED)
                .differs(
                        "slope of ryegrass",
                        "2.478",
                        () -> fit("slope_b"),
                        "the page is wrong: R package drc and least squares here agree on 2.98222")
                .differs(
                        "residual standard error of ryegrass",
                        ".5286",
                        () -> fit("residual_se"),
                        "the page is wrong: R package drc and least squares here agree on .5196256");
    }

    private static double againstTheControl(double mean) {
        return 1 - ManyMeans.controlAtMost(Math.abs(mean - 5124.00) / 235.115, 5, 15);
    }

    private static double fit(String key) {
        return DoseResponseFit.FIGURE
                .answer(DoseResponseFit.FIGURE.examples().get(0).inputs())
                .number(key);
    }

    private static double fitted(double dose) {
        return LogLogistic.response(dose, fit("slope_b"), fit("lower_c"), fit("upper_d"), fit("ed50_e"));
    }

    private static Answer barley() {
        return PairedStrips.FIGURE.answer(PairedStrips.FIGURE.examples().get(2).inputs());
    }

    private static Answer answer(String key, String value) {
        return BlockAnova.FIGURE.answer(Map.of(key, value));
    }
}
