package plumbrow.science.weedseason;

/**
 * Seed that a surviving weed sheds.
 *
 *   seeds of a plant = F·e^{−σ·T}/(1 + a·p);  T  days after the crop, at least 0;  p  plants of the species left [1/m²]
 *
 * @param seedsPerPlant F, viable seeds of a plant that came with the crop; half for dioecious pigweeds
 * @param perDay σ, fall per day of delay [1/d]
 * @param crowdingM2 a, crowding [m²/plant], 0 for none
 * Source: annual balance of the seedbank; fall by emergence: Hartzler, Battles & Nordby 2004; Nordby & Hartzler 2004.
 */
public record SeedSet(double seedsPerPlant, double perDay, double crowdingM2) {
    public SeedSet {
        Limits.notNegative("seeds of a plant", seedsPerPlant);
        Limits.notNegative("fall of seed per day", perDay);
        Limits.notNegative("crowding", crowdingM2);
    }

    /** Seeds of a plant that stands alone among its kind. */
    double alone(double daysAfterCrop) {
        return seedsPerPlant * Math.exp(-perDay * Math.max(0, daysAfterCrop));
    }
}
