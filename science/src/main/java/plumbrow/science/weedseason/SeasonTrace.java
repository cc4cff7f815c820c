package plumbrow.science.weedseason;

import java.util.List;

/**
 * One draw of a season, day by day, for pictures and for the working.
 *
 * @param firstDay day of the year of the first entry
 * @param species one for each weed, in the season's order
 * @param controls control left by each residual that was laid, in the order of the passes
 * @param made day of the year on which each pass of the season was made; after the last day where it was not
 * @param lossPct yield lost to all weeds together [%]
 */
public record SeasonTrace(
        int firstDay, List<OfSpecies> species, List<ControlLeft> controls, List<Integer> made, double lossPct) {

    /**
     * A weed. All numbers are plants/m²; on each day: standing = standing the day before + emerged − died − killed.
     *
     * @param emerged came up that day, those that a residual killed at once not among them
     * @param stoppedByResidual came up that day and were killed by residuals
     * @param died of the day's seedlings, on their own or under the crop
     * @param killed by passes that day
     * @param standing at the end of the day
     * @param brokenDormancy all that came up so far, whatever became of it
     * @param left of those that came up that day, still standing at the end
     * @param loadPct competitive load of all that stood or was removed [%]
     * @param seedsM2 seed shed [1/m²]
     */
    @SuppressWarnings("ArrayRecordComponent") // One number a day; read only.
    public record OfSpecies(
            String name,
            double[] emerged,
            double[] stoppedByResidual,
            double[] died,
            double[] killed,
            double[] standing,
            double[] brokenDormancy,
            double[] left,
            double loadPct,
            double seedsM2) {}

    /**
     * A residual.
     *
     * @param dose share of its rate at work in the germination layer, each day
     * @param controlPct control of that day's susceptible emergers, species by day [%]
     */
    @SuppressWarnings("ArrayRecordComponent") // One number a day; read only.
    public record ControlLeft(String name, double[] dose, double[][] controlPct) {}

    /** Follows a draw of a season. */
    public static SeasonTrace of(WeedSeason season, double[][] columns, int draw) {
        return new Tracer(season, columns, draw).trace();
    }
}
