package plumbrow.advice.search;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.season.Season;
import plumbrow.science.weeds.HyperbolicLoss;

/**
 * The weeds that drive a field's programme, and how many sites of action must work on each.
 *
 * <p>A weed drives where it would take 2 % of the yield or more at its mean density if nothing were done (common practice,
 * no source). Of each, so many sites must work as asked, or as many as all that may be put on together have.
 */
final class Drivers {
    private static final double LOSS_PCT = 2;
    private static final String GATE = "sites-of-action";

    private Drivers() {}

    static Set<String> of(Season season, Field field) {
        Set<String> weeds = new TreeSet<>();
        season.pests().weeds().stream()
                .filter(weed -> weed.field().equals(field.name()))
                .filter(weed -> HyperbolicLoss.ofLoad(
                                weed.firstPlantLossPct()
                                        * Chances.of(weed.densityPerSquareMetre())
                                                .mean(),
                                weed.mostLossPct())
                        >= LOSS_PCT)
                .forEach(weed -> weeds.add(weed.weed()));
        return weeds;
    }

    /** For each of the weeds, how many sites work on it by what the gates found; 0 where they found nothing. */
    static Map<String, Integer> sites(Set<String> weeds, List<Finding> findings) {
        Map<String, Integer> sites = new TreeMap<>();
        weeds.forEach(weed -> sites.put(weed, 0));
        for (Finding finding : findings) {
            if (finding.gate().equals(GATE) && weeds.contains(finding.subject()) && finding.measured() != null) {
                sites.put(finding.subject(), finding.measured().intValue());
            }
        }
        return sites;
    }

    static boolean enough(Map<String, Integer> sites, Map<String, Integer> needed) {
        return needed.entrySet().stream().allMatch(one -> sites.getOrDefault(one.getKey(), 0) >= one.getValue());
    }
}
