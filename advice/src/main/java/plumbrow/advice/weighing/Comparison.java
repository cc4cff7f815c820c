package plumbrow.advice.weighing;

/**
 * Two programs on the same draws.
 *
 * @param program the one with the higher mean margin
 * @param other the one it is held against
 * @param meanDifferenceUsdPerAcre mean of program minus other [$/ac]
 * @param difference its 10, 50 and 90 % points [$/ac]
 * @param chanceBetter share of draws in which {@code program} earns more; a tie counts half
 * @param leads how often it earns more, the two are level, and the other earns more
 * @param firstDegree whoever is better at every level of luck in these draws, or "none"
 * @param secondDegree whoever any risk-averse person prefers in these draws, or "none"
 */
public record Comparison(
        String program,
        String other,
        double meanDifferenceUsdPerAcre,
        Band difference,
        double chanceBetter,
        Leads leads,
        String firstDegree,
        String secondDegree) {}
