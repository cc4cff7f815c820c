package plumbrow.advice.pests;

import plumbrow.advice.outlook.Chances;
import plumbrow.advice.outlook.Law;

/**
 * How hard a weed presses on a field.
 *
 * @param densityPerSquareMetre plants that would stand in the crop if nothing were done [1/m²]
 * @param lossPerPlantPct I: yield loss per plant per m² as density goes to zero [%]; one number is spread between site-years
 * @param mostLossPct A: yield loss as density grows without bound [%], more than 0 up to 100
 */
public record WeedPressure(
        String field, String weed, Law densityPerSquareMetre, Law lossPerPlantPct, double mostLossPct, String source) {
    /** With one number for the loss per plant. */
    public WeedPressure(
            String field,
            String weed,
            Law densityPerSquareMetre,
            double lossPerPlantPct,
            double mostLossPct,
            String source) {
        this(field, weed, densityPerSquareMetre, new Law.Fixed(lossPerPlantPct), mostLossPct, source);
    }

    /** The likely I [% per plant/m²], for what is said of the weed in general. */
    public double firstPlantLossPct() {
        if (lossPerPlantPct instanceof Law.Pert pert) {
            return pert.likely();
        }
        return Chances.of(lossPerPlantPct).mean();
    }
}
