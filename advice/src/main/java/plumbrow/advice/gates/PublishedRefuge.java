package plumbrow.advice.gates;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.Trait;

/**
 * The refuge sizes commonly published for the Corn Belt, by the number of trait groups aimed at an insect. Told to a
 * person who has not read the tag; never used in place of it.
 *
 * <p>Source: University of Kentucky ENTFACT-128 and -147; University of Wisconsin W114; letter of the federal agency of
 * November 2013 on 5 % blends. Cotton counties ask for more.
 */
final class PublishedRefuge {
    private PublishedRefuge() {}

    /** One sentence: the sizes for this seed's traits. */
    static String sizes(Season season, Seed seed) {
        Map<String, Set<String>> groups = new TreeMap<>();
        for (Trait trait : season.shelf().traits()) {
            if (seed.traits().contains(trait.name())) {
                groups.computeIfAbsent(trait.insect(), insect -> new TreeSet<>())
                        .add(trait.group());
            }
        }
        String sizes = groups.isEmpty()
                ? "5 to 20 %"
                : groups.entrySet().stream()
                        .map(entry -> size(entry.getKey(), entry.getValue().size()))
                        .collect(Collectors.joining("; "));
        return "Published sizes, confirm on the tag: " + sizes + "; more in cotton counties.";
    }

    private static String size(String insect, int groups) {
        if (groups > 1) {
            return groups + " modes of action on " + insect + ", 5 % in the bag or in a block";
        }
        return insect.contains("rootworm")
                ? "one mode of action on " + insect + ", 20 % in a block or 10 % in the bag"
                : "one mode of action on " + insect + ", 20 % in a block";
    }
}
