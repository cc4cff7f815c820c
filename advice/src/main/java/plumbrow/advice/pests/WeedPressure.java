package plumbrow.advice.pests;

import plumbrow.advice.outlook.Law;

/**
 * How hard a weed presses on a field.
 *
 * @param densityPerSquareMetre plants that would stand in the crop if nothing were done [1/m²]
 * @param firstPlantLossPct I: yield loss per plant per m² as density goes to zero [%]
 * @param mostLossPct A: yield loss as density grows without bound [%], more than 0 up to 100
 */
public record WeedPressure(
        String field,
        String weed,
        Law densityPerSquareMetre,
        double firstPlantLossPct,
        double mostLossPct,
        String source) {}
