package plumbrow.advice.assumptions;

import java.util.Arrays;
import java.util.List;

/**
 * Ties one column of draws to another by a rank correlation, its own values kept to the last bit.
 *
 *   r = 2·sin(π·ρ/6);  score = r·Φ⁻¹(rank of leader) + √(1 − r²)·Φ⁻¹(own rank);  values re-ordered to the ranks of score
 *
 *   ρ  Spearman rank correlation wanted [-]
 *   r  the correlation of normals that gives it
 *
 * Source: Iman &amp; Conover 1982, Commun. Stat. B 11:311 (idea); the relation of r and ρ is that of the Gaussian copula.
 */
final class RankTie {
    private RankTie() {}

    /** @param normal standard normal quantiles at (i + ½)/N, low to high */
    static Column tie(Column own, Column leader, double rankCorrelation, double[] normal) {
        if (rankCorrelation == 0) {
            return own;
        }
        int draws = own.values().length;
        double pull = pull(rankCorrelation);
        double rest = Math.sqrt(1 - pull * pull);
        double[] score = new double[draws];
        for (int i = 0; i < draws; i++) {
            score[i] = pull * normal[leader.ranks()[i]] + rest * normal[own.ranks()[i]];
        }
        return byScore(own, score);
    }

    /**
     * The same to several columns that are free of each other, and to a further column of standard normals that many fields
     * share, such as the luck of a region. The scores of two fields that share all of them are then correlated by
     * {@code between}, or by what the columns alone bring about where that is more. Where columns ask for more than all of it,
     * the first come first.
     *
     * @param shared standard normals; empty where there are none
     */
    static Column tie(Column own, List<DrawSource.Tie> ties, double[] shared, double between, double[] normal) {
        double[] score = new double[own.values().length];
        double told = 0;
        for (DrawSource.Tie tie : ties) {
            double most = Math.sqrt(Math.max(0, 1 - told));
            double pull = Math.max(-most, Math.min(most, pull(tie.rankCorrelation())));
            told += pull * pull;
            for (int i = 0; i < score.length; i++) {
                score[i] += pull * normal[tie.ranks()[i]];
            }
        }
        double common = shared.length == 0 ? 0 : Math.sqrt(Math.max(0, between - told));
        double rest = Math.sqrt(Math.max(0, 1 - told - common * common));
        for (int i = 0; i < score.length; i++) {
            score[i] += (common == 0 ? 0 : common * shared[i]) + rest * normal[own.ranks()[i]];
        }
        return byScore(own, score);
    }

    /**
     * A column in another year: of its spread a share belongs to the field and stays, the rest is what that year brings.
     *
     *   field = √s·z + √(1 − s)·ξ;  score of the year = √s·field + √(1 − s)·z of the draw that the year takes
     *
     * so that the scores of any two years of a draw are correlated by s, and each year has the column's own values.
     *
     * @param row for each draw, the draw whose year it is
     * @param share s of each draw [0 to 1]
     * @param field ξ, standard normals that stand for what the field's part is beside this year's draw
     */
    static Column again(Column own, int[] row, double[] share, double[] field, double[] normal) {
        double[] score = new double[own.values().length];
        for (int i = 0; i < score.length; i++) {
            double stays = Math.sqrt(share[i]);
            double changes = Math.sqrt(1 - share[i]);
            double here = stays * normal[own.ranks()[i]] + changes * field[i];
            score[i] = stays * here + changes * normal[own.ranks()[row[i]]];
        }
        return byScore(own, score);
    }

    private static double pull(double rankCorrelation) {
        return 2 * Math.sin(Math.PI * rankCorrelation / 6);
    }

    /** The values put in the order of the scores. */
    private static Column byScore(Column own, double[] score) {
        int draws = score.length;
        double[] sorted = own.sorted();
        double[] sortedScore = score.clone();
        Arrays.sort(sortedScore);
        int[] ranks = new int[draws];
        double[] values = new double[draws];
        boolean[] taken = new boolean[draws];
        for (int i = 0; i < draws; i++) {
            int rank = Arrays.binarySearch(sortedScore, score[i]);
            while (rank > 0 && sortedScore[rank - 1] == score[i]) {
                rank--;
            }
            while (taken[rank]) {
                rank++;
            }
            taken[rank] = true;
            ranks[i] = rank;
            values[i] = sorted[rank];
        }
        return new Column(values, ranks);
    }
}
