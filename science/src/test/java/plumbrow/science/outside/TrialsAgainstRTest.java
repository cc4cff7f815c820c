package plumbrow.science.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbrow.science.trials.ManyMeans;

@Tag("r")
@DisplayName("Strip trials beside R, on 20 seeded data sets each")
class TrialsAgainstRTest extends BesideR {
    private static final int SETS = 20;
    /** Relative; both sides are double arithmetic on the same numbers. */
    private static final double SAME = 1e-8;

    private final Draws draws = new Draws(1931);

    @Test
    @DisplayName("Paired t: difference, standard error, t, df, p, both ends, chance above break-even; 1e-8")
    void pairedStrips() {
        for (int set = 0; set < SETS; set++) {
            int pairs = draws.whole(2, 12);
            double[] a = draws.list(pairs, 200, 12);
            double[] b = draws.list(pairs, 195, 12);
            double confidence = draws.between(.8, .99);
            double gain = draws.between(-3, 8);
            ours.add(answer(
                    "paired-strips",
                    Map.of(
                            "a", Draws.typed(a),
                            "b", Draws.typed(b),
                            "confidence", Double.toString(confidence),
                            "break_even", Double.toString(gain))));
            r.add("a", a, "b", b, "confidence", confidence, "gain", gain);
        }
        same(
                r.answers("""
                        t <- t.test(s$a, s$b, paired = TRUE, conf.level = s$confidence)
                        c(t$estimate, t$stderr, t$statistic, t$parameter, t$p.value, t$conf.int,
                          pt((t$estimate - s$gain) / t$stderr, t$parameter))
                        """),
                SAME,
                "difference",
                "standard_error",
                "t",
                "df",
                "p",
                "low",
                "high",
                "chance_above_break_even");
    }

    @Test
    @DisplayName("Randomised blocks by aov: squares, F, p, LSD, CV, standard error of a difference; 1e-8")
    void blocks() {
        for (int set = 0; set < SETS; set++) {
            double[][] yields = field(draws.whole(2, 6), draws.whole(2, 7));
            ours.add(answer("block-anova", Map.of("yields", Draws.typed(yields), "confidence", "0.95")));
            r.add("y", yields);
        }
        same(
                r.answers("""
                        d <- data.frame(y = c(s$y), block = factor(c(row(s$y))), way = factor(c(col(s$y))))
                        a <- summary(aov(y ~ block + way, d))[[1]]
                        ms <- a[["Mean Sq"]]; b <- nrow(s$y)
                        sed <- sqrt(2 * ms[3] / b)
                        c(a[["Sum Sq"]], ms[3], a[["F value"]][2], a[["Pr(>F)"]][2], a[["F value"]][1], a[["Pr(>F)"]][1],
                          100 * sqrt(ms[3]) / mean(s$y), qt(.975, a$Df[3]) * sed, sed)
                        """),
                SAME,
                "ss_block",
                "ss_treatment",
                "ss_error",
                "ms_error",
                "f",
                "p",
                "f_block",
                "p_block",
                "cv_pct",
                "lsd",
                "standard_error_difference");
    }

    @Test
    @DisplayName("Split plot by aov with Error(block/whole): squares, F and p of all three tests; 1e-8")
    void splitPlot() {
        for (int set = 0; set < SETS; set++) {
            int blocks = draws.whole(2, 5);
            int wholes = draws.whole(2, 4);
            double[][] yields = field(blocks * wholes, draws.whole(2, 5));
            ours.add(answer("split-plot", Map.of("yields", Draws.typed(yields), "wholes", Integer.toString(wholes))));
            r.add("y", yields, "wholes", wholes);
        }
        same(
                r.answers("""
                        strip <- c(row(s$y)) - 1
                        d <- data.frame(y = c(s$y), block = factor(strip %/% s$wholes), whole = factor(strip %% s$wholes),
                                        inside = factor(c(col(s$y))))
                        a <- summary(aov(y ~ whole * inside + Error(block / whole), d))
                        top <- a[["Error: block"]][[1]]; up <- a[["Error: block:whole"]][[1]]; low <- a[["Error: Within"]][[1]]
                        c(top[["Sum Sq"]][1], up[["Sum Sq"]], low[["Sum Sq"]], up[["F value"]][1], up[["Pr(>F)"]][1],
                          low[["F value"]][1:2], low[["Pr(>F)"]][1:2])
                        """),
                SAME,
                "ss_block",
                "ss_whole",
                "ss_error_a",
                "ss_inside",
                "ss_interaction",
                "ss_error_b",
                "f_whole",
                "p_whole",
                "f_inside",
                "f_interaction",
                "p_inside",
                "p_interaction");
    }

    @Test
    @DisplayName("Studentised range by qtukey, 1e-4 as R promises it, and ptukey, 1e-5")
    void honestDifference() {
        double[][] found = new double[SETS][];
        for (int set = 0; set < SETS; set++) {
            int means = draws.whole(2, 12);
            int df = draws.whole(3, 40);
            double chance = draws.between(.8, .99);
            double q = draws.between(1, 6);
            found[set] = new double[] {ManyMeans.honestRange(chance, means, df), ManyMeans.rangeAtMost(q, means, df)};
            r.add("means", means, "df", df, "chance", chance, "q", q);
        }
        List<double[]> theirs = r.answers("c(qtukey(s$chance, s$means, s$df), ptukey(s$q, s$means, s$df))");
        for (int set = 0; set < SETS; set++) {
            assertThat(found[set][0]).isCloseTo(theirs.get(set)[0], within(1e-4));
            assertThat(found[set][1]).isCloseTo(theirs.get(set)[1], within(1e-5));
        }
    }

    @Test
    @DisplayName("Against a control by the many-dimensional t of mvtnorm, itself random; 0.002 in the chance")
    void againstControl() {
        double[] found = new double[SETS];
        for (int set = 0; set < SETS; set++) {
            int treatments = draws.whole(2, 8);
            int df = draws.whole(4, 30);
            double d = draws.between(1.5, 3.5);
            found[set] = ManyMeans.controlAtMost(d, treatments, df);
            r.add("k", treatments, "df", df, "d", d);
        }
        List<double[]> theirs = r.answers("""
                set.seed(1)
                c(pmvt(rep(-s$d, s$k), rep(s$d, s$k), df = s$df, corr = matrix(.5, s$k, s$k) + diag(.5, s$k)))
                """, "mvtnorm");
        for (int set = 0; set < SETS; set++) {
            assertThat(found[set]).isCloseTo(theirs.get(set)[0], within(.002));
        }
    }

    @Test
    @DisplayName("A lost plot is what least squares on the others foretells; 1e-7")
    void lostPlot() {
        for (int set = 0; set < SETS; set++) {
            double[][] yields = field(draws.whole(2, 6), draws.whole(2, 6));
            double block = 0;
            double treatment = 0;
            double all = 0;
            for (int i = 0; i < yields.length; i++) {
                for (int j = 0; j < yields[0].length; j++) {
                    boolean lost = i == 0 && j == 0;
                    block += i == 0 && !lost ? yields[i][j] : 0;
                    treatment += j == 0 && !lost ? yields[i][j] : 0;
                    all += lost ? 0 : yields[i][j];
                }
            }
            ours.add(answer(
                    "lost-plot",
                    Map.of(
                            "treatments", Integer.toString(yields[0].length),
                            "blocks", Integer.toString(yields.length),
                            "block_total", Double.toString(block),
                            "treatment_total", Double.toString(treatment),
                            "grand_total", Double.toString(all))));
            r.add("y", yields);
        }
        same(r.answers("""
                        d <- data.frame(y = c(s$y), block = factor(c(row(s$y))), way = factor(c(col(s$y))))
                        predict(lm(y ~ block + way, d[-1, ]), d[1, ])
                        """), 1e-7, "value");
    }

    private double[][] field(int blocks, int ways) {
        double[][] yields = new double[blocks][ways];
        for (double[] row : yields) {
            double level = draws.around(180, 15);
            for (int j = 0; j < ways; j++) {
                yields(row, j, level);
            }
        }
        return yields;
    }

    private void yields(double[] row, int way, double level) {
        row[way] = draws.around(level + 2.0 * way, 8);
    }
}
