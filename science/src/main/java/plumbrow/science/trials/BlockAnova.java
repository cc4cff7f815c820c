package plumbrow.science.trials;

import static plumbrow.science.figure.Input.table;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Treatments compared within blocks of a field. The sums of squares are those of {@link BlockTable}.
 *
 *   F = MS_treatment/MS_error;  CV = 100·√MS_error/ȳ;  SED = √(2·MS_error/b);  LSD = t_{1−α/2}·SED
 *   efficiency against no blocks = [(b−1)·MS_block + b(t−1)·MS_error]/[(bt−1)·MS_error]
 *
 * LSD is for a few planned pairs, and only where F is significant. Where nothing is left as error, F and p are none.
 *
 * Source: Gomez & Gomez 1984, Statistical Procedures for Agricultural Research.
 */
public final class BlockAnova {
    public static final Figure FIGURE = Figure.declare("block-anova", Subject.TRIALS)
            .question("Do treatments laid out in blocks differ by more than the field does?")
            .input(table(
                    "yields",
                    "Yields: a row for each block, a column for each treatment",
                    "bu/ac",
                    Range.NOT_NEGATIVE,
                    "212.4,205.0;205.1,199.8;198.7,196.2;220.3,209.1"))
            .input(Asked.CONFIDENCE)
            .output("ss_block", "Squares between blocks", "")
            .output("ss_treatment", "Squares between treatments", "")
            .output("ss_error", "Squares left as error", "")
            .output("ms_error", "Mean square of the error", "")
            .output("f", "F of the treatments", "")
            .output("p", "Chance of so large an F if treatments did not differ", "")
            .output("cv_pct", "Spread of a plot in percent of the mean", "%")
            .output("lsd", "Least significant difference", "bu/ac")
            .output("standard_error_difference", "Standard error of a difference", "bu/ac")
            .output("standard_error_mean", "Standard error of a mean", "bu/ac")
            .output("means", "Means of the treatments", "bu/ac")
            .output("f_block", "F of the blocks", "")
            .output("p_block", "Chance of so large an F if blocks did not differ", "")
            .output("efficiency", "Plots saved by blocking: times as many would be needed without", "")
            .formula(
                    "F = MS treatment ÷ MS error; SED = √(2 × MS error ÷ blocks); LSD = t × SED; CV = 100 × √MS error ÷ mean")
            .source("[gomez-1984]", MEMORY)
            .validity(
                    "Two or more blocks, two or more treatments, every treatment once in each block. Where no error is left,"
                            + " the word none stands for F, p and efficiency.")
            .caution("Least significant differences serve a few planned pairs, and only where F is significant.")
            .caution(Asked.NOT_SHOWN)
            .example(
                    "yields=" + BlockTable.RICE,
                    "ss_block=1944360.83 ss_treatment=1198330.83 ss_error=1658376.17 ms_error=110558.41 f=2.1678 p=.1128094"
                            + " cv_pct=6.7043 lsd=501.136 standard_error_difference=235.115 standard_error_mean=166.252"
                            + " means=5124.00,5070.25,5304.25,4847.75,4708.00,4703.25 f_block=5.8622 p_block=.0074158"
                            + " efficiency=1.634",
                    "rice seeding rates, [gomez-1984]",
                    COMPUTED)
            .example(
                    "yields=" + BlockTable.RICE + " confidence=.9",
                    "lsd=412.169",
                    "rice seeding rates, [gomez-1984], at 10 %",
                    COMPUTED)
            .example(
                    "yields=212.4,205.0;205.1,199.8;198.7,196.2;220.3,209.1;209.9,206.6;201.6,192.3",
                    "f=21.6963 cv_pct=1.1805",
                    "the six pairs of paired-strips: F is t²",
                    COMPUTED)
            .model(BlockAnova::solve);

    private BlockAnova() {}

    private static Outputs solve(Given given, Working working) {
        BlockTable table = new BlockTable(Asked.blocks(given, "yields"));
        int b = table.blocks();
        int t = table.treatments();
        if (table.mean() <= 0) {
            throw given.refuse("yields", "yields of which some are more than 0");
        }
        double[] squares = table.show(working);
        double block = squares[0];
        double treatment = squares[1];
        double error = squares[2];
        int df = (b - 1) * (t - 1);
        double ms = working.line("mean square of the error", error / df, "", "{} ÷ {}", error, df);
        double sed =
                working.line("standard error of a difference", Math.sqrt(2 * ms / b), "bu/ac", "√(2 × {} ÷ {})", ms, b);
        double sem = working.line("standard error of a mean", Math.sqrt(ms / b), "bu/ac", "√({} ÷ {})", ms, b);
        double cv = working.line(
                "spread of a plot", 100 * Math.sqrt(ms) / table.mean(), "%", "100 × √({}) ÷ {}", ms, table.mean());
        double confidence = given.number("confidence");
        double reach = working.line(
                "t for the interval",
                StudentT.forConfidence(confidence, df),
                "",
                "T⁻¹({}; {})",
                (1 + confidence) / 2,
                df);
        double lsd = working.line("least significant difference", reach * sed, "bu/ac", "{} × {}", reach, sed);
        Asked.cautionFewBlocks(working, b);
        Outputs outputs = new Outputs()
                .put("ss_block", block)
                .put("ss_treatment", treatment)
                .put("ss_error", error)
                .put("ms_error", ms)
                .put("cv_pct", cv)
                .put("lsd", lsd)
                .put("standard_error_difference", sed)
                .put("standard_error_mean", sem)
                .put("means", table.treatmentMeans());
        if (Asked.isRounding(Math.sqrt(ms), table.mean())) {
            working.caution("No error is left: the blocks agree to the last digit, and nothing can be tested.");
            return outputs.put("f", Asked.NO_SPREAD)
                    .put("p", Asked.NO_SPREAD)
                    .put("f_block", Asked.NO_SPREAD)
                    .put("p_block", Asked.NO_SPREAD)
                    .put("efficiency", Asked.NO_SPREAD);
        }
        double p = FisherF.show(working, outputs, "f", "p", "treatments", treatment, t - 1, ms, df);
        FisherF.show(working, outputs, "f_block", "p_block", "blocks", block, b - 1, ms, df);
        if (p > 1 - confidence) {
            working.caution("F is not significant: don't pick pairs by the least significant difference.");
        }
        return outputs.put(
                "efficiency",
                working.line(
                        "plots needed without blocks, for one",
                        (block + b * (t - 1) * ms) / ((b * t - 1) * ms),
                        "",
                        "({} + {} × {} × {}) ÷ ({} × {})",
                        block,
                        b,
                        t - 1,
                        ms,
                        b * t - 1,
                        ms));
    }
}
