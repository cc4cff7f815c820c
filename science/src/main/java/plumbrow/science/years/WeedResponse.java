package plumbrow.science.years;

/**
 * What becomes of one seedling of a weed in a season under one program, by biotype and draw.
 *
 * Bit l of a biotype's number says that it resists at gene l, so there are 2^genes of them. A stand of any density and mix is
 * put together from these without error:
 *
 *   plants = Σ seedlings_b·survive_b;  load = Σ seedlings_b·load_b;  seed = Σ seedlings_b·seeds_b/(1 + crowding·plants)
 *
 * since a weed season is linear in its seedlings but for the crowding of those that seed. No density is tabulated and none
 * interpolated between.
 *
 * @param survive plants at the end of the season, per seedling; biotype by draw
 * @param seeds seed that they would shed if no other stood near, per seedling; biotype by draw
 * @param load competitive load [%] of one seedling/m²; biotype by draw
 * @param crowdingM2 a [m²/plant], 0 for none
 */
@SuppressWarnings("ArrayRecordComponent") // Primitive arrays on purpose: read in the innermost loop.
public record WeedResponse(double[][] survive, double[][] seeds, double[][] load, double crowdingM2) {
    public WeedResponse {
        if (survive.length != seeds.length || survive.length != load.length) {
            throw new IllegalArgumentException("a response needs survivors, seed and load of the same biotypes");
        }
        if (!(crowdingM2 >= 0)) {
            throw new IllegalArgumentException("crowding is " + crowdingM2 + "; expected 0 or more");
        }
    }

    /** Number of biotypes. */
    public int biotypes() {
        return survive.length;
    }

    /** Number of draws. */
    public int draws() {
        return survive[0].length;
    }
}
