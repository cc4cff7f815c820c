package plumbrow.advice.years;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;

/**
 * How the seed of a weed lives and multiplies, as far as somebody has measured it. Sites differ several times over: all are
 * drawn.
 *
 * @param germination share of the spring's seed that comes up in a year
 * @param mortality share of the rest that dies in the year
 * @param kept share of the seed shed that lies in the soil next spring
 * @param selfing share of seed by own pollen
 * @param crowdingM2 crowding [m²/plant]
 * @param seeds viable seeds of a plant that is left, male plants counted in, by crop; a crop that is not there borrows corn's
 */
public record SeedLife(
        String weed,
        Distribution germination,
        Distribution mortality,
        Distribution kept,
        double selfing,
        double crowdingM2,
        Map<Crop, Distribution> seeds,
        String source) {
    private static final Distribution ALL = new Distribution.Fixed(1);

    private static final List<SeedLife> KNOWN = List.of(
            new SeedLife(
                    "waterhemp",
                    pert(.01, .05, .235),
                    pert(.32, .36, .72),
                    ALL,
                    0,
                    .5,
                    Map.of(Crop.CORN, pert(650, 4_500, 24_200), Crop.SOYBEAN, pert(1_500, 8_500, 154_500)),
                    "seed in the soil: Buhler & Hartzler 2001, Schutte & Davis 2014; seed a plant by day of emergence, half"
                            + " of the plants female: Nordby & Hartzler 2004 (corn), Hartzler et al. 2004 (soybean);"
                            + " crowding a planning value, no source"),
            new SeedLife(
                    "giant foxtail",
                    pert(.30, .38, .54),
                    pert(.50, .525, .90),
                    pert(.014, .10, .317),
                    .95,
                    .02,
                    Map.of(Crop.CORN, pert(518, 1_150, 2_544), Crop.SOYBEAN, pert(230, 459, 918)),
                    "Davis, Dixon & Liebman 2004, Buhler & Hartzler 2001, Fausey et al. 1997; what escapes predation likely"
                            + " 10 %, soybean halved and doubled, selfing and crowding: planning values, no source"),
            new SeedLife(
                    "common lambsquarters",
                    pert(.01, .10, .20),
                    pert(.10, .20, .25),
                    ALL,
                    .9,
                    .05,
                    Map.of(Crop.CORN, pert(1_000, 10_000, 100_751)),
                    "Freckleton & Watkinson 1998; seed of a plant under a crop, selfing and crowding: planning values, no"
                            + " source"),
            new SeedLife(
                    "velvetleaf",
                    pert(.22, .26, .31),
                    pert(.44, .50, .55),
                    ALL,
                    .9,
                    .05,
                    Map.of(Crop.CORN, pert(186, 230, 822)),
                    "Buhler & Hartzler 2001, Westerman et al. 2005; selfing and crowding: planning values, no source"),
            new SeedLife(
                    "giant ragweed",
                    pert(.12, .18, .27),
                    pert(.60, .684, .76),
                    new Distribution.Fixed(.4),
                    0,
                    .5,
                    Map.of(Crop.CORN, pert(650, 985, 1_480), Crop.SOYBEAN, pert(930, 1_400, 2_100)),
                    "Liebman & Nichols 2020; widened by half, crowding a planning value, no source"));

    public SeedLife {
        seeds = Map.copyOf(seeds);
    }

    /** What is known of a weed; empty where nobody has measured it. */
    public static Optional<SeedLife> of(String weed) {
        return KNOWN.stream().filter(one -> one.weed().equals(weed)).findFirst();
    }

    /** Names of the weeds of which something is known. */
    public static List<String> known() {
        return KNOWN.stream().map(SeedLife::weed).toList();
    }

    Distribution seedsIn(Crop crop) {
        Distribution corn = seeds.get(Crop.CORN);
        return seeds.getOrDefault(crop, corn == null ? new Distribution.Fixed(0) : corn);
    }

    private static Distribution pert(double low, double likely, double high) {
        return new Distribution.Pert(low, likely, high);
    }
}
