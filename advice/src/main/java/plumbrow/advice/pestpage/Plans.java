package plumbrow.advice.pestpage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * Two passes against a pest in a crop: one before it is up, one after, with at least two sites of action that work.
 *
 * Of all pairs of what works, the pair with the most sites, at least two of them not failing on any field of the crop; of
 * those alike the one that lets least through. Only what is rated for its timing is taken.
 */
final class Plans {
    private static final int FEWEST = 2;

    private final PestKind kind;
    private final boolean below;
    private final Set<String> failing;
    private final Map<String, Double> doubts;

    private Plans(PestKind kind, boolean below, Set<String> failing, Map<String, Double> doubts) {
        this.kind = kind;
        this.below = below;
        this.failing = failing;
        this.doubts = doubts;
    }

    static TwoPasses of(
            PestKind kind, boolean below, Crop crop, List<String> fields, List<Works> works, List<FailedSite> failed) {
        Set<String> failing = failed.stream()
                .filter(one -> fields.contains(one.field()))
                .filter(one -> kind == PestKind.WEED)
                .map(FailedSite::group)
                .collect(Collectors.toCollection(TreeSet::new));
        Map<String, Double> doubts = failed.stream()
                .filter(one -> fields.contains(one.field()) && kind == PestKind.INSECT && one.sharePct() != null)
                .collect(Collectors.toMap(
                        FailedSite::group, one -> Objects.requireNonNull(one.sharePct()) / 100, Math::max));
        return new Plans(kind, below, failing, doubts).best(crop, fields, works);
    }

    private TwoPasses best(Crop crop, List<String> fields, List<Works> works) {
        List<Works> effective = works.stream()
                .filter(one -> one.crop() == crop && one.works())
                .filter(one -> one.groups() == null || !failing.containsAll(one.groups()))
                .toList();
        List<@Nullable Works> before =
                orNone(effective.stream().filter(one -> one.reach().first()).toList());
        List<@Nullable Works> after =
                orNone(effective.stream().filter(one -> one.reach().second()).toList());
        Works bestBefore = null;
        Works bestAfter = null;
        int most = -1;
        double least = Double.POSITIVE_INFINITY;
        for (Works first : before) {
            for (Works second : after) {
                int sites = Math.min(FEWEST, sites(first, second).size());
                double through = through(first) * through(second);
                if (sites > most || (sites == most && through < least)) {
                    most = sites;
                    least = through;
                    bestBefore = first;
                    bestAfter = second;
                }
            }
        }
        List<String> sites = sites(bestBefore, bestAfter);
        boolean holds = bestBefore != null && bestAfter != null && sites.size() >= FEWEST;
        String untimed = (bestBefore != null && bestAfter != null) || below
                ? ""
                : effective.stream()
                        .filter(one -> one.reach() == Works.Reach.UNSAID)
                        .map(Works::product)
                        .distinct()
                        .collect(Collectors.joining(", "));
        String says = says(bestBefore, bestAfter, sites)
                + (untimed.isEmpty()
                        ? ""
                        : " By the control sheet " + untimed
                                + " works, but at which timing nobody has written: enter a rating with its timing.");
        return new TwoPasses(crop, fields, bestBefore, bestAfter, sites, holds, says);
    }

    private static List<@Nullable Works> orNone(List<Works> found) {
        List<@Nullable Works> all = new ArrayList<>(found);
        all.sort(Comparator.comparing(Works::rank));
        if (all.isEmpty()) {
            all.add(null);
        }
        return all;
    }

    /** Share let through; a trait's by the chance that it holds on the field where it is most in doubt. */
    private double through(@Nullable Works works) {
        if (works == null || works.meanPct() == null) {
            return 1;
        }
        double doubt = works.groups() == null
                ? 0
                : works.groups().stream()
                        .mapToDouble(group -> doubts.getOrDefault(group, 0.0))
                        .max()
                        .orElse(0);
        return 1 - works.meanPct() / 100 * (1 - doubt);
    }

    private List<String> sites(@Nullable Works first, @Nullable Works second) {
        Set<String> sites = new TreeSet<>();
        for (Works one : new Works[] {first, second}) {
            if (one != null && one.groups() != null) {
                sites.addAll(one.groups());
            }
        }
        sites.removeAll(failing);
        return List.copyOf(sites);
    }

    private String says(@Nullable Works before, @Nullable Works after, List<String> sites) {
        String wanting = kind == PestKind.WEED ? "a rated product for it" : "one that is rated and labelled for it";
        if (kind == PestKind.INSECT && below) {
            return before == null
                    ? "Nothing on this shelf is rated to hold it at planting, and no pass over the crop reaches it."
                    : "It feeds below ground: what is there at planting must hold it. No pass over the crop reaches it.";
        }
        if (before == null && after == null) {
            return "No two passes on this shelf: neither is " + wanting + ".";
        }
        if (before == null || after == null) {
            return "One pass only: for the " + (before == null ? "first" : "second") + " there is none on this shelf.";
        }
        return sites.size() >= FEWEST
                ? "Two passes, " + sites.size() + " sites of action that work: " + String.join(", ", sites) + "."
                : "Two passes, but only " + (sites.isEmpty() ? "unknown sites" : "site " + String.join(", ", sites))
                        + ": a second effective site is wanted. None on this shelf gives it.";
    }
}
