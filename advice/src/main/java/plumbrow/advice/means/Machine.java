package plumbrow.advice.means;

import plumbrow.science.spraying.FieldCapacity;

/**
 * A planter or sprayer of a farm.
 *
 * @param widthFt effective width [ft]
 * @param speedMph field speed [mph]
 * @param efficiencyPct share of the time in which it works [%], more than 0 up to 100
 */
public record Machine(
        String farm,
        String name,
        MachineKind kind,
        double widthFt,
        double speedMph,
        double efficiencyPct,
        String source) {
    /** Acres in an hour. */
    public double acresPerHour() {
        return FieldCapacity.acresPerHour(speedMph, widthFt, efficiencyPct / 100);
    }
}
