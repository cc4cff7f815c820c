package plumbrow.advice.outlook;

import java.util.Arrays;

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
        double pull = 2 * Math.sin(Math.PI * rankCorrelation / 6);
        double rest = Math.sqrt(1 - pull * pull);
        double[] sorted = own.sorted();
        double[] score = new double[draws];
        for (int i = 0; i < draws; i++) {
            score[i] = pull * normal[leader.ranks()[i]] + rest * normal[own.ranks()[i]];
        }
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
