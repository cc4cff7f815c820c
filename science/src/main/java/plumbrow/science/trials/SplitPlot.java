package plumbrow.science.trials;

import static plumbrow.science.figure.Input.number;
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
 * A trial of whole strips, such as tillage, with another factor inside each.
 *
 *   whole-plot factor over error a = blocks × whole plots;  factor inside and interaction over error b, the rest
 *   SED: two wholes √(2MS_a/(r·n)), two insides √(2MS_b/(r·w)), two insides in one whole √(2MS_b/r),
 *   two wholes at one inside √(2[(n−1)MS_b + MS_a]/(r·n));  r blocks, w wholes, n insides
 *
 * One error for all is the classic mistake: it calls the effect of tillage significant too often.
 *
 * Source: Yates 1935 (data R MASS oats); forms from memory.
 */
public final class SplitPlot {
    private static final String OATS =
            "117,114,161,141;105,140,118,156;111,130,157,174;70,108,126,149;96,124,121,144;61,91,97,100;"
                    + "60,102,89,96;89,129,132,124;68,64,112,86;64,103,132,133;70,89,104,117;74,89,81,122;80,82,94,126;63,70,109,99;"
                    + "62,90,100,116;89,82,86,104;97,99,119,121;53,74,118,113";

    public static final Figure FIGURE = Figure.declare("split-plot", Subject.TRIALS)
            .question("Does tillage, or another factor of whole strips, differ, and does the factor inside the strips?")
            .input(table(
                    "yields",
                    "A row for each strip, block after block; a column for each level inside",
                    "",
                    Range.NOT_NEGATIVE,
                    OATS))
            .input(number(
                    "wholes", "Strips (levels of the whole-plot factor) in each block", "", Range.closed(2, 100), "3"))
            .output("ss_block", "Squares between blocks", "")
            .output("ss_whole", "Squares of the whole-plot factor", "")
            .output("ss_error_a", "Squares of error a", "")
            .output("ss_inside", "Squares of the factor inside", "")
            .output("ss_interaction", "Squares of both together", "")
            .output("ss_error_b", "Squares of error b", "")
            .output("f_whole", "F of the whole-plot factor", "")
            .output("p_whole", "Its chance if there were nothing", "")
            .output("f_inside", "F of the factor inside", "")
            .output("p_inside", "Its chance if there were nothing", "")
            .output("f_interaction", "F of both together", "")
            .output("p_interaction", "Its chance if there were nothing", "")
            .output("sed_whole", "Standard error of a difference of two wholes", "")
            .output("sed_inside", "Standard error of a difference of two insides", "")
            .output("sed_inside_in_whole", "Of two insides in one whole", "")
            .output("sed_whole_at_inside", "Of two wholes at one inside", "")
            .output("cv_a_pct", "Spread of a strip", "%")
            .output("cv_b_pct", "Spread of a plot", "%")
            .formula("F whole = MS whole ÷ MS error a; F inside and interaction = MS ÷ MS error b")
            .source("analysis of split plots, [yates-1935]", MEMORY)
            .validity(
                    "Two blocks, strips and levels or more, none missing, some error left at both layers; else refused.")
            .caution(Asked.NOT_SHOWN)
            .example(
                    "yields=" + OATS + " wholes=3",
                    "ss_block=15875.3 ss_whole=1786.4 ss_error_a=6013.3 ss_inside=20020.5 ss_interaction=321.7 ss_error_b=7968.8"
                            + " f_whole=1.4853 p_whole=.2724 f_inside=37.686 f_interaction=.3028 p_interaction=.9322 sed_whole=7.079"
                            + " sed_inside=4.436 sed_inside_in_whole=7.683 sed_whole_at_inside=9.715 cv_a_pct=23.59 cv_b_pct=12.80",
                    "oats, [yates-1935], with R 4.2",
                    COMPUTED)
            .model(SplitPlot::solve);

    private SplitPlot() {}

    private static Outputs solve(Given given, Working working) {
        double[][] rows = Asked.blocks(given, "yields");
        int w = (int) given.number("wholes");
        int n = rows[0].length;
        if (given.number("wholes") != w || rows.length % w != 0 || rows.length / w < 2) {
            throw given.refuse(
                    "wholes",
                    "a whole number of which the rows (" + rows.length + ") are twice as many, three times or more");
        }
        int r = rows.length / w;
        double[][] strips = new double[r][w];
        double[][] cells = new double[w][n];
        for (int i = 0; i < rows.length; i++) {
            strips[i / w][i % w] = Asked.mean(rows[i]);
            for (int j = 0; j < n; j++) {
                cells[i % w][j] += rows[i][j] / r;
            }
        }
        BlockTable outer = new BlockTable(strips);
        BlockTable inner = new BlockTable(cells);
        double mean = outer.mean();
        if (mean <= 0) {
            throw given.refuse("yields", "yields of which some are more than 0");
        }
        double block = working.step(
                "squares between blocks",
                w * n + " × (" + Asked.squareTerms(outer.blockMeans(), mean) + ")",
                w * n * Asked.squares(outer.blockMeans(), mean),
                "");
        double whole = working.step(
                "squares of the whole-plot factor",
                r * n + " × (" + Asked.squareTerms(outer.treatmentMeans(), mean) + ")",
                r * n * Asked.squares(outer.treatmentMeans(), mean),
                "");
        double errorA = working.step(
                "squares of error a", "what strips vary beyond block and factor", n * outer.errorSquares(), "");
        double inside = working.step(
                "squares of the factor inside",
                r * w + " × (" + Asked.squareTerms(inner.treatmentMeans(), mean) + ")",
                r * w * Asked.squares(inner.treatmentMeans(), mean),
                "");
        double both = working.step(
                "squares of both together", "what their table varies beyond each", r * inner.errorSquares(), "");
        double within = 0;
        for (double[] row : rows) {
            within += Asked.squares(row, Asked.mean(row));
        }
        double errorB = working.line(
                "squares of error b", Math.max(0, within - inside - both), "", "{} − {} − {}", within, inside, both);
        int dfA = (r - 1) * (w - 1);
        int dfB = w * (r - 1) * (n - 1);
        double msA = working.line("mean square of error a", errorA / dfA, "", "{} ÷ {}", errorA, dfA);
        double msB = working.line("mean square of error b", errorB / dfB, "", "{} ÷ {}", errorB, dfB);
        if (Asked.isRounding(Math.sqrt(msA), mean) || errorB <= 1e-12 * within) {
            throw given.refuse(
                    "yields", "yields that leave some error between and within strips: nothing can be tested without");
        }
        Outputs outputs = new Outputs()
                .put("ss_block", block)
                .put("ss_whole", whole)
                .put("ss_error_a", errorA)
                .put("ss_inside", inside)
                .put("ss_interaction", both)
                .put("ss_error_b", errorB);
        FisherF.show(working, outputs, "f_whole", "p_whole", "whole-plot factor", whole, w - 1, msA, dfA);
        FisherF.show(working, outputs, "f_inside", "p_inside", "factor inside", inside, n - 1, msB, dfB);
        FisherF.show(
                working, outputs, "f_interaction", "p_interaction", "two together", both, (w - 1) * (n - 1), msB, dfB);
        Asked.cautionFewBlocks(working, r);
        return outputs.put(
                        "sed_whole",
                        working.line(
                                "two wholes", Math.sqrt(2 * msA / (r * n)), "", "√(2 × {} ÷ ({} × {}))", msA, r, n))
                .put(
                        "sed_inside",
                        working.line(
                                "two insides", Math.sqrt(2 * msB / (r * w)), "", "√(2 × {} ÷ ({} × {}))", msB, r, w))
                .put(
                        "sed_inside_in_whole",
                        working.line("two insides in one whole", Math.sqrt(2 * msB / r), "", "√(2 × {} ÷ {})", msB, r))
                .put(
                        "sed_whole_at_inside",
                        working.line(
                                "two wholes at one inside",
                                Math.sqrt(2 * ((n - 1) * msB + msA) / (r * n)),
                                "",
                                "√(2 × (({} − 1) × {} + {}) ÷ ({} × {}))",
                                n,
                                msB,
                                msA,
                                r,
                                n))
                .put(
                        "cv_a_pct",
                        working.line(
                                "spread of a strip", 100 * Math.sqrt(msA) / mean, "%", "100 × √({}) ÷ {}", msA, mean))
                .put(
                        "cv_b_pct",
                        working.line(
                                "spread of a plot", 100 * Math.sqrt(msB) / mean, "%", "100 × √({}) ÷ {}", msB, mean));
    }
}
