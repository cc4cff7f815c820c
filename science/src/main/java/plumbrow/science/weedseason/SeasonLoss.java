package plumbrow.science.weedseason;

/**
 * What the weeds of a season cost and leave, draw by draw.
 *
 * @param lossPct yield lost to all weeds together [% of weed-free], one a draw
 * @param loadPct competitive load of each species [%], species by draw: shares of the loss go by it
 * @param survivorsM2 plants of each species at the end [1/m²], species by draw
 * @param seedsM2 seed that each species shed [1/m²], species by draw
 */
@SuppressWarnings("ArrayRecordComponent") // Primitive arrays on purpose: ten thousand draws of them.
public record SeasonLoss(double[] lossPct, double[][] loadPct, double[][] survivorsM2, double[][] seedsM2) {

    /**
     * Reckons a season on draws.
     *
     * @param columns what is drawn: {@link Uncertain} numbers name their column; each at least {@code draws} long
     */
    public static SeasonLoss of(WeedSeason season, double[][] columns, int draws) {
        return of(season, columns, draws, 1);
    }

    /**
     * The same with several days in a cohort: quicker, and off by no more than {@link Cohorts} says.
     *
     * @param daysEach days in a cohort, 1 or more
     */
    public static SeasonLoss of(WeedSeason season, double[][] columns, int draws, int daysEach) {
        int species = season.species().size();
        SeasonLoss loss = new SeasonLoss(
                new double[draws], new double[species][draws], new double[species][draws], new double[species][draws]);
        new SeasonKernel(season, columns, new Cohorts(season.days().count(), daysEach)).run(0, draws, loss);
        return loss;
    }
}
