package plumbrow.advice.weighing;

/**
 * One cost of a course, averaged over the field's acres.
 *
 * @param label what is paid for, such as "Seed: Hollowbrook 108 RW"
 * @param arithmetic how it comes about
 * @param usdPerAcre [$/ac], before the operator's share of costs
 */
public record CostLine(String label, String arithmetic, double usdPerAcre) {}
