package plumbrow.science.weeds;

/**
 * Weed seed in the soil from one spring to the next.
 *
 *   p = S·g·s;  S' = S·(1 − g)·(1 − m) + p·F/(1 + a·p)
 *   break-even survival (a = 0): s* = (1 − (1 − g)(1 − m))/(g·F)
 *   rotation of crops: λ = Π over crops of [(1 − g)·bank + g·s·F·escape]; the bank grows where λ is above 1
 *
 *   S  viable seeds before emergence [1/m²];  g  share that emerges;  s  share of seedlings that sets seed, after control
 *   F  viable seeds per plant that reach the soil;  m  share of ungerminated seed that dies in the year
 *   a  crowding [m²/plant], 0 for none;  p  plants that set seed [1/m²]
 *   bank  share of ungerminated seed alive next spring;  escape  share of new seed alive next spring
 *
 * New seed is not aged in its first year: put that loss into F. For dioecious pigweeds F counts half.
 *
 * Source: annual seedbank equation; rotation checks: Davis, Dixon & Liebman 2004, Ecol. Appl. 14:655;
 * Liebman & Nichols 2020, Agronomy 10:262.
 */
public final class Seedbank {
    private Seedbank() {}

    /** p [plants/m²]. */
    public static double plants(double seeds, double germination, double survival) {
        return seeds * germination * survival;
    }

    /** S' [seeds/m²]. */
    public static double next(
            double seeds, double germination, double survival, double fecundity, double mortality, double crowding) {
        double plants = plants(seeds, germination, survival);
        return kept(seeds, germination, mortality) + crowded(plants * fecundity, plants, crowding);
    }

    /** S·(1 − g)·(1 − m): old seed that lies there next spring [seeds/m²]. */
    public static double kept(double seeds, double germination, double mortality) {
        return seeds * (1 - germination) * (1 - mortality);
    }

    /** Seed/(1 + a·p): what plants shed where they crowd, from what as many would shed alone [seeds/m²]. */
    public static double crowded(double alone, double plants, double crowding) {
        return alone / (1 + crowding * plants);
    }

    /** s*, the share of seedlings that may set seed without the bank growing, at most 1. */
    public static double breakEvenSurvival(double germination, double fecundity, double mortality) {
        return Math.min(1, (1 - (1 - germination) * (1 - mortality)) / (germination * fecundity));
    }

    /** λ of one crop: how many times as much seed lies in the soil a year later. */
    public static double growth(
            double germination, double bankAlive, double survival, double fecundity, double escape) {
        return (1 - germination) * bankAlive + germination * survival * fecundity * escape;
    }
}
