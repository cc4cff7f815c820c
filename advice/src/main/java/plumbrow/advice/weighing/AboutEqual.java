package plumbrow.advice.weighing;

import java.util.List;

/**
 * Programs that are about equal to the one that leads, it among them, by {@link EqualRule}.
 *
 * @param programs their names, highest mean margin first; two or more
 * @param widestUsdPerAcre by how much the last of them is behind the first on average [$/ac]
 * @param cheapest the one that costs the operator least
 * @param safest the one with the best expected shortfall
 * @param mostOftenBest the one that earns most in the most simulated seasons
 * @param says which they are and how far apart, in one sentence
 * @param named the cheapest, safest and most often best of them, in one sentence
 */
public record AboutEqual(
        List<String> programs,
        double widestUsdPerAcre,
        String cheapest,
        String safest,
        String mostOftenBest,
        String says,
        String named) {
    public AboutEqual {
        programs = List.copyOf(programs);
    }
}
