package plumbrow.advice.gates;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.RefugeRule.Form;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.Trait;
import plumbrow.science.figure.Numbers;

/**
 * The refuge published for insect-resistant corn, by modes of action on each insect and by region. Never used in place of the
 * tag: it is held beside what somebody typed from it, so that a slip of the pen is found.
 *
 * <pre>                              Corn Belt                cotton region
 *   one on caterpillars          20 % block               50 % block         within 2,640 ft
 *   two or more                  5 %                      20 % block         within 2,640 ft
 *   one on rootworm              20 % block, 10 % in bag  20 % block         in the field or adjacent
 *   two or more                  5 %                      20 % block         in the field or adjacent</pre>
 *
 * <p>Strips are four rows or wider. Proteins between which resistance crosses are one mode of action, whatever groups the
 * book has. Where both kinds of insect are meant the larger holds.
 *
 * <p>Source: University of Kentucky ENTFACT-128 and -147; University of Wisconsin W114; letter of the federal agency of
 * November 2013 on 5 % blends; cotton region: sizes of the registration terms of 30 September 2010, its counties from memory.
 *
 * @param requiredPct share of all corn acres [%]
 * @param inBag whether it may be kept in the bag alone
 * @param farthestFt how far a block may lie [ft]
 * @param why the modes of action it follows from, in words
 */
record PublishedRefuge(double requiredPct, boolean inBag, double farthestFt, String why) {
    static final int FEWEST_ROWS = 4;
    private static final double HALF_MILE_FT = 2640;

    /** Proteins between which resistance crosses (insects reference 5.1; Cry1 and Cry3 families partly from memory). */
    private static final Map<String, String> CROSSING = Map.of(
            "cry3bb1", "Cry3",
            "mcry3a", "Cry3",
            "ecry3.1ab", "Cry3",
            "cry1ab", "Cry1",
            "cry1a.105", "Cry1",
            "cry1f", "Cry1");

    /** The modes of action of a seed on each insect; empty sets are left out. */
    private static Map<String, Set<String>> modes(Season season, Seed seed) {
        Map<String, Set<String>> groups = new TreeMap<>();
        for (Trait trait : season.shelf().traits()) {
            if (seed.traits().contains(trait.name())) {
                groups.computeIfAbsent(trait.insect(), insect -> new TreeSet<>())
                        .add(CROSSING.getOrDefault(trait.name().toLowerCase(Locale.ROOT), trait.group()));
            }
        }
        return groups;
    }

    /**
     * What is published for a seed on a field; empty where one of its traits is not on the traits sheet, so that nobody can
     * count.
     *
     * @param form how the tag keeps it
     */
    static Optional<PublishedRefuge> of(Case at, Seed seed, Form form) {
        Set<String> known = new TreeSet<>();
        at.season().shelf().traits().forEach(trait -> known.add(trait.name()));
        if (!known.containsAll(seed.traits())) {
            return Optional.empty();
        }
        boolean cotton = at.places().stream().anyMatch(CottonRegion::holds);
        double share = 0;
        boolean inBag = !cotton;
        double farthest = HALF_MILE_FT;
        List<String> why = new ArrayList<>();
        for (Map.Entry<String, Set<String>> insect : modes(at.season(), seed).entrySet()) {
            boolean one = insect.getValue().size() == 1;
            boolean rootworm = rootworm(insect.getKey());
            share = Math.max(share, size(one, rootworm, cotton, form));
            inBag &= !one || rootworm;
            farthest = rootworm ? 0 : farthest;
            why.add((one ? "one mode of action" : insect.getValue().size() + " modes of action") + " on "
                    + insect.getKey());
        }
        return Optional.of(new PublishedRefuge(
                share, inBag, farthest, String.join(", ", why) + (cotton ? ", in the cotton region" : "")));
    }

    private static double size(boolean one, boolean rootworm, boolean cotton, Form form) {
        if (cotton) {
            return one && !rootworm ? 50 : 20;
        }
        if (!one) {
            return 5;
        }
        return rootworm && form == Form.BLEND ? 10 : 20;
    }

    private static boolean rootworm(String insect) {
        return insect.toLowerCase(Locale.ROOT).contains("rootworm");
    }

    /** What a program that keeps the tag as typed lacks of the published refuge, as a sentence; null where it lacks nothing. */
    @Nullable
    String lacking(RefugeRule rule, SeedLots lots, RefugePlan plan) {
        List<String> lacks = new ArrayList<>();
        double planted = rule.form() == Form.BLEND && inBag ? lots.refugePct() : lots.blockPct();
        if (Rounding.below(planted, requiredPct)) {
            lacks.add(Numbers.read(requiredPct) + " % of the corn acres" + (inBag ? "" : " in a block or strips")
                    + ", and " + Numbers.read(planted) + " % is planted");
        }
        Double distance = plan.distanceFt();
        if (rule.form() == Form.BLOCK && distance != null && Rounding.above(distance, farthestFt)) {
            lacks.add((farthestFt == 0
                            ? "in the field or adjacent"
                            : "no farther off than " + Numbers.read(farthestFt) + " ft")
                    + ", and it lies " + Numbers.read(distance) + " ft off");
        }
        Integer rows = plan.rows();
        if (rule.form() == Form.BLOCK && rows != null && rows < FEWEST_ROWS) {
            lacks.add("strips of " + FEWEST_ROWS + " rows or more, and they have " + rows);
        }
        return lacks.isEmpty() ? null : "For " + why + " is published: " + String.join("; ", lacks) + ".";
    }

    /** One sentence for who has not read the tag: the sizes for this seed's traits. */
    static String sizes(Season season, Seed seed) {
        List<String> sizes = new ArrayList<>();
        modes(season, seed).forEach((insect, groups) -> sizes.add(size(insect, groups.size())));
        return "Published sizes, confirm on the tag: " + (sizes.isEmpty() ? "5 to 20 %" : String.join("; ", sizes))
                + "; more in cotton counties.";
    }

    private static String size(String insect, int groups) {
        if (groups > 1) {
            return groups + " modes of action on " + insect + ", 5 % in the bag or in a block";
        }
        return rootworm(insect)
                ? "one mode of action on " + insect + ", 20 % in a block or 10 % in the bag"
                : "one mode of action on " + insect + ", 20 % in a block";
    }
}
