package plumbrow.science.weedseason;

import plumbrow.science.weeds.HyperbolicLoss;

/**
 * How hard a weed presses the crop, by when it came and how long it stayed.
 *
 *   strength of a plant = I·e^{−c·T};  cost of one that is removed after t days = strength/(1 + (half/t)^slope)
 *
 * T is days after the crop emerged; a weed more than ten days ahead counts as ten days ahead (ours: the curve was never
 * fitted there). t counts from the later of both emergences.
 *
 * @param firstPlantLossPct I, loss per plant/m² as density goes to 0 [%], weed with the crop
 * @param highestLossPct A, loss at very high density [%], at most 100
 * @param perDay c, strength lost per day of delay [1/d]
 * @param halfDays days of competition that cost half of a full season's
 * @param slope how sharply that sets in [-]
 * @param times draws of I against that number: multiplies the load, 0 or more
 * Source: {@link HyperbolicLoss}; removal: L(T)/C, fitted to Soltani, Shropshire & Sikkema 2022.
 */
public record Competition(
        double firstPlantLossPct,
        double highestLossPct,
        double perDay,
        double halfDays,
        double slope,
        Uncertain times) {
    private static final double MOST_AHEAD_DAYS = 10;

    public Competition {
        Limits.notNegative("loss per plant", firstPlantLossPct);
        Limits.positive("highest loss", highestLossPct);
        Limits.notNegative("strength lost per day", perDay);
        Limits.positive("days to half the cost", halfDays);
        Limits.positive("slope of the cost of waiting", slope);
        if (highestLossPct > 100) {
            throw new IllegalArgumentException("highest loss is " + highestLossPct + " %; expected 100 at most");
        }
    }

    /** With I as it is. */
    public Competition(double firstPlantLossPct, double highestLossPct, double perDay, double halfDays, double slope) {
        this(firstPlantLossPct, highestLossPct, perDay, halfDays, slope, Uncertain.known(1));
    }

    /** The same with I drawn. */
    public Competition times(Uncertain drawn) {
        return new Competition(firstPlantLossPct, highestLossPct, perDay, halfDays, slope, drawn);
    }

    /** By how much a draw's load is that of I. */
    double timesIn(double[][] columns, int draw) {
        return Math.max(0, times.in(columns, draw));
    }

    /** Competitive load [%] of one plant/m² that stays, T days after the crop, by I itself. */
    public double load(double daysAfterCrop) {
        return HyperbolicLoss.load(1, firstPlantLossPct, perDay, Math.max(-MOST_AHEAD_DAYS, daysAfterCrop));
    }

    /** Share of its full-season load that a plant has cost when it is removed. */
    double costBy(double daysTogether) {
        return daysTogether <= 0 ? 0 : 1 / (1 + Math.pow(halfDays / daysTogether, slope));
    }
}
