package plumbrow.science.chance;

import java.util.Arrays;

/**
 * How draws of several variables are made to move together without changing any of them.
 *
 *   Gaussian copula: normals with r = 2·sin(π·ρ_S/6) give the rank correlation ρ_S (from Kendall's τ: r = sin(πτ/2))
 *   reordering: scores Φ⁻¹(i/(n+1)) by the ranks of each variable's draws, S; E = cor(S) = QQᵀ; target C = PPᵀ;
 *   R = S·(Q⁻¹)ᵀ·Pᵀ; each variable's own draws in the order of its column of R
 *
 * The first variable keeps its order; every variable keeps its draws.
 *
 * Source: Iman & Conover 1982, Commun. Stat. B 11:311; steps as on blogs.sas.com/content/iml/2021/06/16.
 */
public final class RankCorrelation {
    private RankCorrelation() {}

    /** The correlation of normals that gives the rank correlation ρ_S, −1 to 1. */
    public static double normalFromSpearman(double spearman) {
        return 2 * Math.sin(Math.PI * spearman / 6);
    }

    /** The correlation of normals that gives Kendall's τ, −1 to 1. */
    public static double normalFromKendall(double kendall) {
        return Math.sin(Math.PI * kendall / 2);
    }

    /** Spearman's ρ_S of two variables; equal values take their mean rank. */
    public static double spearman(double[] x, double[] y) {
        return pearson(ranks(x), ranks(y));
    }

    /** Pearson's r of two variables, at least two draws and neither of them all equal. */
    public static double pearson(double[] x, double[] y) {
        double meanX = SortedDraws.mean(x);
        double meanY = SortedDraws.mean(y);
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int i = 0; i < x.length; i++) {
            xx += (x[i] - meanX) * (x[i] - meanX);
            yy += (y[i] - meanY) * (y[i] - meanY);
            xy += (x[i] - meanX) * (y[i] - meanY);
        }
        return xy / Math.sqrt(xx * yy);
    }

    /**
     * The same draws, each variable reordered so that their rank correlations come close to the target.
     *
     * @param draws draws[v][k] of variable v, all of one length above the number of variables
     * @param target correlation of the scores, positive definite
     * @throws IllegalArgumentException where the target can't hold, or the scores of two variables move fully together
     */
    public static double[][] reordered(double[][] draws, double[][] target) {
        int variables = draws.length;
        int n = draws[0].length;
        Refusal.unless(target.length == variables, "the target needs one row for each variable");
        double[][] scores = new double[variables][];
        for (int v = 0; v < variables; v++) {
            Refusal.unless(draws[v].length == n, "every variable needs the same number of draws");
            scores[v] = scores(draws[v]);
        }
        Cholesky wanted = new Cholesky(target);
        Cholesky found = new Cholesky(correlation(scores));
        double[] row = new double[variables];
        for (int k = 0; k < n; k++) {
            for (int v = 0; v < variables; v++) {
                row[v] = scores[v][k];
            }
            found.decorrelate(row);
            wanted.correlate(row);
            for (int v = 0; v < variables; v++) {
                scores[v][k] = row[v];
            }
        }
        double[][] result = new double[variables][];
        result[0] = draws[0].clone();
        for (int v = 1; v < variables; v++) {
            result[v] = inOrderOf(draws[v], scores[v]);
        }
        return result;
    }

    private static double[] scores(double[] draws) {
        int[] order = Order.of(draws);
        double[] scores = new double[draws.length];
        for (int i = 0; i < order.length; i++) {
            scores[order[i]] = StandardNormal.quantile((i + 1.0) / (order.length + 1.0));
        }
        return scores;
    }

    private static double[] inOrderOf(double[] draws, double[] leader) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        int[] order = Order.of(leader);
        double[] result = new double[draws.length];
        for (int i = 0; i < order.length; i++) {
            result[order[i]] = sorted[i];
        }
        return result;
    }

    private static double[][] correlation(double[][] columns) {
        double[][] matrix = new double[columns.length][columns.length];
        for (int i = 0; i < columns.length; i++) {
            matrix[i][i] = 1;
            for (int j = 0; j < i; j++) {
                matrix[i][j] = pearson(columns[i], columns[j]);
                matrix[j][i] = matrix[i][j];
            }
        }
        return matrix;
    }

    private static double[] ranks(double[] values) {
        int[] order = Order.of(values);
        double[] ranks = new double[values.length];
        int from = 0;
        while (from < order.length) {
            int to = from;
            while (to + 1 < order.length && values[order[to + 1]] == values[order[from]]) {
                to++;
            }
            for (int i = from; i <= to; i++) {
                ranks[order[i]] = (from + to) / 2.0;
            }
            from = to + 1;
        }
        return ranks;
    }
}
