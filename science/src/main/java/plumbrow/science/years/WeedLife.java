package plumbrow.science.years;

/**
 * How a weed's seed lives from spring to spring.
 *
 *   spring = S·(1 − winter);  up = spring·g;  S' = (spring − up)·(1 − m) + seed shed·kept + seed from outside
 *
 * @param germination g, share of the spring's seed that comes up in a year
 * @param mortality m, share of the rest that dies in the year
 * @param winterLoss share of all seed that dies before spring; 0 where m counts the whole year
 * @param seedKept share of the seed shed that lies in the soil next spring
 * @param selfing share of seed by own pollen: 0 where the sexes are apart, near 1 in most grasses
 * Source: {@link plumbrow.science.weeds.Seedbank}; a winter of its own: Diggle, Neve & Smith 2003, Weed Res. 43:371.
 */
public record WeedLife(double germination, double mortality, double winterLoss, double seedKept, double selfing) {
    public WeedLife {
        share("germination", germination);
        share("mortality", mortality);
        share("winter loss", winterLoss);
        share("seed kept", seedKept);
        share("selfing", selfing);
    }

    /** Without a winter of its own. */
    public WeedLife(double germination, double mortality, double seedKept, double selfing) {
        this(germination, mortality, 0, seedKept, selfing);
    }

    /** Inbreeding of a stand that has long selfed so: σ/(2 − σ). */
    public double inbreeding() {
        return selfing / (2 - selfing);
    }

    private static void share(String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " is " + value + "; expected a share from 0 to 1");
        }
    }
}
