package plumbrow.science.weedseason;

import java.util.List;

/**
 * One season of one field under one set of passes: all that the weed season is reckoned from.
 *
 * @param days weather from before the first weed to harvest
 * @param species all weeds of the field, at least one
 * @param passes in any order; planned within the days
 */
public record WeedSeason(Days days, Crop crop, List<Species> species, List<Pass> passes) {
    private static final int MOST_TILLAGE = 5;

    public WeedSeason {
        species = List.copyOf(species);
        passes = List.copyOf(passes);
        if (species.isEmpty()) {
            throw new IllegalArgumentException("no weed; expected at least one species");
        }
        if (!days.has(crop.emergenceDay())) {
            throw new IllegalArgumentException("the crop is up on day " + crop.emergenceDay()
                    + ", outside the days of weather, " + days.first() + " to " + (days.first() + days.count() - 1));
        }
        if (passes.stream().filter(Tillage.class::isInstance).count() > MOST_TILLAGE) {
            throw new IllegalArgumentException("more than " + MOST_TILLAGE + " tillage passes in a season");
        }
        for (Pass pass : passes) {
            if (!days.has(pass.day())) {
                throw new IllegalArgumentException(pass.name() + " is on day " + pass.day()
                        + ", outside the days of weather, " + days.first() + " to "
                        + (days.first() + days.count() - 1));
            }
            int rated = rated(pass, species.size());
            if (rated != species.size()) {
                throw new IllegalArgumentException(pass.name() + " is rated on " + rated
                        + " weeds; expected one rating for each of " + species.size());
            }
        }
    }

    private static int rated(Pass pass, int weeds) {
        if (pass instanceof Residual residual) {
            return residual.responses().size();
        }
        return pass instanceof Post post ? post.responses().size() : weeds;
    }

    /** The same season under other passes. */
    public WeedSeason with(List<Pass> others) {
        return new WeedSeason(days, crop, species, others);
    }

    /** The highest loss of any of its weeds [%]: the loss of all together goes to it. */
    public double highestLossPct() {
        return species.stream()
                .mapToDouble(one -> one.competition().highestLossPct())
                .max()
                .orElseThrow();
    }
}
