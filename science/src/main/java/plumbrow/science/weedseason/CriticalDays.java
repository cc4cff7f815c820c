package plumbrow.science.weedseason;

import java.util.List;
import java.util.Optional;
import plumbrow.science.weeds.HyperbolicLoss;

/**
 * From when to when a crop must be kept free of its weeds, reckoned from the weeds that are there, with no pass made.
 *
 *   begin: first day on which weeds that stood until then, and are all removed that day, have cost more than is accepted
 *   end:   first day after which all that comes up costs no more than is accepted
 *
 * Days of the year. Where the end comes before the begin, one clean day between the two is enough. The day after the season's
 * last stands for "never": weeds that stay to the end cost more, though what was removed before did not.
 *
 * Source: the two halves of the critical period, Knezevic et al. 2002, Weed Sci. 50:773 (value from memory); the loss is that of
 * {@link Competition}.
 */
public record CriticalDays(int begin, int end, double acceptedLossPct) {

    /** Empty where all weeds together cost no more than is accepted. */
    public static Optional<CriticalDays> of(WeedSeason season, double[][] columns, int draw, double acceptedLossPct) {
        double[][] living = season.species().stream()
                .map(weed -> living(season, weed, columns, draw))
                .toArray(double[][]::new);
        int count = season.days().count();
        int first = season.days().first();
        if (afterwards(season, living, -1) <= acceptedLossPct) {
            return Optional.empty();
        }
        int begin = 0;
        while (begin < count && untilRemoved(season, living, begin) <= acceptedLossPct) {
            begin++;
        }
        int end = 0;
        while (end < count && afterwards(season, living, end) > acceptedLossPct) {
            end++;
        }
        return Optional.of(new CriticalDays(first + begin, first + end, acceptedLossPct));
    }

    /** Plants of each day that would live, by what each costs against I itself [1/m²]. */
    private static double[] living(WeedSeason season, Species weed, double[][] columns, int draw) {
        double density = Math.max(0, weed.densityM2().in(columns, draw))
                * weed.competition().timesIn(columns, draw);
        double shift = weed.shiftDays().in(columns, draw);
        Stand stand = new Stand(season, weed, density);
        double[] living = new double[season.days().count()];
        for (int i = 0; i < living.length; i++) {
            living[i] = stand.sprouted(i, shift, List.of(), new int[0])
                    * weed.shade().live(season.crop(), season.days().first() + i);
        }
        return living;
    }

    private static double untilRemoved(WeedSeason season, double[][] living, int removed) {
        int crop = season.crop().emergenceDay() - season.days().first();
        double load = 0;
        for (int j = 0; j < living.length; j++) {
            Competition competition = season.species().get(j).competition();
            for (int i = 0; i <= removed; i++) {
                load += living[j][i] * competition.load(i - crop) * competition.costBy(removed - Math.max(crop, i));
            }
        }
        return HyperbolicLoss.ofLoad(load, season.highestLossPct());
    }

    private static double afterwards(WeedSeason season, double[][] living, int clean) {
        int crop = season.crop().emergenceDay() - season.days().first();
        double load = 0;
        for (int j = 0; j < living.length; j++) {
            Competition competition = season.species().get(j).competition();
            for (int i = clean + 1; i < living[j].length; i++) {
                load += living[j][i] * competition.load(i - crop);
            }
        }
        return HyperbolicLoss.ofLoad(load, season.highestLossPct());
    }
}
