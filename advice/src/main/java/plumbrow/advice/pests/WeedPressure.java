package plumbrow.advice.pests;

import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;

/**
 * How hard a weed presses on a field.
 *
 * @param densityPerSquareMetre plants that would stand in the crop if nothing were done [1/m²]
 * @param lossPerPlantPct I: yield loss per plant per m² as density goes to zero [%]; one number is spread between site-years
 * @param mostLossPct A: yield loss as density grows without bound [%], more than 0 up to 100
 */
public record WeedPressure(
        String field,
        String weed,
        Distribution densityPerSquareMetre,
        Distribution lossPerPlantPct,
        double mostLossPct,
        String source) {
    /** With one number for the loss per plant. */
    public WeedPressure(
            String field,
            String weed,
            Distribution densityPerSquareMetre,
            double lossPerPlantPct,
            double mostLossPct,
            String source) {
        this(field, weed, densityPerSquareMetre, new Distribution.Fixed(lossPerPlantPct), mostLossPct, source);
    }

    /** The likely I [% per plant/m²], for what is said of the weed in general. */
    public double firstPlantLossPct() {
        return likelyLossPct(lossPerPlantPct);
    }

    /** The likely I of a distribution of it [% per plant/m²]. */
    public static double likelyLossPct(Distribution lossPerPlantPct) {
        if (lossPerPlantPct instanceof Distribution.Pert pert) {
            return pert.likely();
        }
        return Chances.of(lossPerPlantPct).mean();
    }
}
