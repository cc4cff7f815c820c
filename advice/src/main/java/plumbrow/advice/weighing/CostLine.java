package plumbrow.advice.weighing;

import plumbrow.advice.field.Farm;

/**
 * One cost of a program, averaged over the field's acres.
 *
 * @param kind what leases call it
 * @param label what is paid for, such as "Seed: Hollowbrook 108 RW"
 * @param arithmetic how it comes about
 * @param usdPerAcre [$/ac], before the operator's share of costs; below 0 where something is paid to him
 */
public record CostLine(CostKind kind, String label, String arithmetic, double usdPerAcre) {
    /** What of it the operator of a farm pays [$/ac]. */
    public double operatorUsdPerAcre(Farm farm) {
        return usdPerAcre * operatorShare(farm);
    }

    /** The operator's share of it [0 to 1]. */
    public double operatorShare(Farm farm) {
        return kind.operatorShare(farm);
    }
}
