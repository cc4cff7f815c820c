package plumbrow.science.weedseason;

import java.util.List;
import java.util.Optional;

/**
 * Four weeds of the Corn Belt in corn, to plan with where a field has no numbers of its own.
 *
 *   medians of emergence   Forcella et al. 1997 (verified), shape 2 common practice; burcucumber as tall morningglory
 *   growth                 {@link Growth}: 6 cm at 100 degree days, base 10 °C; the faster and slower ones common practice
 *   loss per plant         order of magnitude only; burcucumber as in a case worked apart from this code
 *   cost of waiting        corn with many weeds (Soltani et al. 2022); burcucumber as soybean with few: morningglory hurt only after
 *                          46 to 60 days (Cordes & Bauman 1984)
 *   seed                   burcucumber 1,800 to 4,500 alone, less 96 % in corn (Esbenshade et al. 2001); waterhemp in corn
 *                          48,400, 9,000, 1,300 at VE, V3, V5, half of the plants female (Nordby & Hartzler 2004); giant
 *                          foxtail 518 to 2,544 (Fausey et al. 1997); lambsquarters common practice, no source
 *   shade                  waterhemp Nordby & Hartzler 2004; the others common practice
 *   depth                  NDSU 2021, Dawson & Bruns 1962; burcucumber best from 1 to 5 cm (Esbenshade et al. 2001)
 *
 * Density and shift are known numbers to be replaced. Every loss is to be shown with a band.
 */
public final class KnownWeeds {
    private static final Uncertain ONE = Uncertain.known(1);
    private static final Uncertain ON_TIME = Uncertain.known(0);
    private static final double BASE_C = 4.4;
    private static final double GROWTH_POWER = 1.64;

    private KnownWeeds() {}

    /** All of them. */
    public static List<Species> all() {
        return List.of(burcucumber(), waterhemp(), giantFoxtail(), lambsquarters());
    }

    /** By name, capitals ignored. */
    public static Optional<Species> find(String name) {
        return all().stream()
                .filter(weed -> weed.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    /** Late, viny. */
    public static Species burcucumber() {
        return weed(
                "burcucumber",
                725,
                new Growth(6, GROWTH_POWER, 600, 10),
                new Competition(5, 60, .03, 58.25, 3.56),
                new SeedSet(120, 0, 0),
                new Shade(0, .1),
                new Depth(3, 10));
    }

    /** Long in coming, quick, full of seed. */
    public static Species waterhemp() {
        return weed(
                "waterhemp",
                639,
                new Growth(8, GROWTH_POWER, 250, 10),
                new Competition(2, 60, .06, 30.5, 2.38),
                new SeedSet(24_200, .12, 0),
                new Shade(.16, .99),
                new Depth(1.3, 5));
    }

    /** Mid-season grass. */
    public static Species giantFoxtail() {
        return weed(
                "giant foxtail",
                265,
                new Growth(6, GROWTH_POWER, 150, 10),
                new Competition(.4, 45, .05, 30.5, 2.38),
                new SeedSet(1500, .05, .02),
                new Shade(.1, .9),
                new Depth(1.9, 12));
    }

    /** Early broadleaf. */
    public static Species lambsquarters() {
        return weed(
                "common lambsquarters",
                200,
                new Growth(5, GROWTH_POWER, 180, 10),
                new Competition(1.5, 50, .05, 30.5, 2.38),
                new SeedSet(10_000, .08, .05),
                new Shade(.1, .9),
                new Depth(2.5, 5));
    }

    private static Species weed(
            String name,
            double halfDegreeDays,
            Growth growth,
            Competition competition,
            SeedSet seedSet,
            Shade shade,
            Depth depth) {
        return new Species(
                name,
                ONE,
                ON_TIME,
                new Emergence(halfDegreeDays, 2, BASE_C),
                growth,
                competition,
                seedSet,
                shade,
                depth,
                List.of(Biotype.susceptible()));
    }
}
