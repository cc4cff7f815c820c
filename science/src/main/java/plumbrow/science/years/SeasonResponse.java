package plumbrow.science.years;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumbrow.science.weedseason.Biotype;
import plumbrow.science.weedseason.SeasonLoss;
import plumbrow.science.weedseason.SeedSet;
import plumbrow.science.weedseason.Species;
import plumbrow.science.weedseason.Uncertain;
import plumbrow.science.weedseason.WeedSeason;

/** The response of a weed to a program, taken from its weed season once for each biotype. */
public final class SeasonResponse {
    private SeasonResponse() {}

    /**
     * The response by what plants resist, group by group.
     *
     * @param place of the weed among the season's species
     * @param groups site-of-action group of each gene, in the order of the genes
     * @param columns and draws as in {@link SeasonLoss#of}
     * @param daysEach days in a cohort; 1 is exact, more is off as {@link SeasonLoss} says
     */
    public static WeedResponse of(
            WeedSeason season, int place, List<Integer> groups, double[][] columns, int draws, int daysEach) {
        List<Set<Integer>> resists = IntStream.range(0, 1 << groups.size())
                .mapToObj(b -> IntStream.range(0, groups.size())
                        .filter(l -> (b >> l & 1) == 1)
                        .mapToObj(groups::get)
                        .collect(Collectors.toSet()))
                .toList();
        return ofBiotypes(season, place, resists, columns, draws, daysEach);
    }

    /** The same with what each biotype resists said one by one, in the order of their numbers. */
    public static WeedResponse ofBiotypes(
            WeedSeason season, int place, List<Set<Integer>> resists, double[][] columns, int draws, int daysEach) {
        double[][] survive = new double[resists.size()][];
        double[][] seeds = new double[resists.size()][];
        double[][] load = new double[resists.size()][];
        Species weed = season.species().get(place);
        for (int b = 0; b < survive.length; b++) {
            SeasonLoss loss = SeasonLoss.of(with(season, place, one(weed, resists.get(b))), columns, draws, daysEach);
            survive[b] = loss.survivorsM2()[place];
            seeds[b] = loss.seedsM2()[place];
            load[b] = loss.loadPct()[place];
        }
        return new WeedResponse(survive, seeds, load, weed.seedSet().crowdingM2());
    }

    /** One seedling/m² of one biotype, its seed not crowded. */
    private static Species one(Species weed, Set<Integer> resists) {
        SeedSet alone =
                new SeedSet(weed.seedSet().seedsPerPlant(), weed.seedSet().perDay(), 0);
        return new Species(
                weed.name(),
                Uncertain.known(1),
                weed.shiftDays(),
                weed.emergence(),
                weed.growth(),
                weed.competition(),
                alone,
                weed.shade(),
                weed.depth(),
                List.of(new Biotype(1, resists)));
    }

    private static WeedSeason with(WeedSeason season, int place, Species weed) {
        List<Species> species = IntStream.range(0, season.species().size())
                .mapToObj(j -> j == place ? weed : season.species().get(j))
                .toList();
        return new WeedSeason(season.days(), season.crop(), species, season.passes());
    }
}
