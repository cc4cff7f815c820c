package plumbrow.advice.gates;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.science.figure.Numbers;

/**
 * Whether at least two sites of action work on each weed that presses on the field.
 *
 * <p>Protects the usefulness of the chemistry. A herbicide counts where its control of the weed at the planned rate is 80 %
 * or more; its groups count, less those that the field's population resists. It never bars. Fewer than two over the season,
 * or two only from one premix, whose partners the book can't tell apart, are conditional. Just two are conditional as well
 * where nobody has written whether this population resists anything; of three one may fail. Unknown where the group of an ingredient or a rate is not
 * known and might make the second. Silent on a program without herbicide.
 *
 * <p>Source: Norsworthy et al. 2012, best practices against resistance; two as the floor is common practice. Needs: weeds,
 * control rows, known resistance, content of products.
 */
final class SitesOfAction extends Question {
    private static final int FEWEST = 2;

    SitesOfAction() {
        super("sites-of-action", Protects.USEFULNESS, "Do two sites of action work on each weed?");
    }

    /** One application that works on a weed, with the groups that still do. */
    private record Works(String product, Set<String> groups) {}

    @Override
    public List<Finding> check(Case at) {
        List<Application> herbicides = at.planned().stream()
                .filter(application -> at.index()
                        .product(application.product())
                        .map(Product::kind)
                        .filter(kind -> kind == ProductKind.HERBICIDE)
                        .isPresent())
                .toList();
        return herbicides.isEmpty()
                ? List.of()
                : at.index().weeds(at.field().name()).stream()
                        .map(weed -> judge(at, herbicides, weed))
                        .toList();
    }

    private Finding judge(Case at, List<Application> herbicides, WeedPressure weed) {
        Set<String> resisted = at.index().resistance(at.field().name()).stream()
                .filter(row -> row.weed().equals(weed.weed()))
                .map(row -> Ingredient.sameSite(row.group()))
                .collect(Collectors.toCollection(TreeSet::new));
        List<Works> works = new ArrayList<>();
        boolean doubtful = false;
        for (Application application : herbicides) {
            List<Kill> rows = at.index().kills(application.product(), weed.weed());
            boolean effective =
                    Kill.at(application.rate(), rows).filter(Kill::effective).isPresent();
            if (application.rate() == null && rows.stream().anyMatch(Kill::effective)) {
                doubtful = true;
            }
            if (effective) {
                Set<String> groups = groups(at, application.product());
                doubtful |= groups == null;
                works.add(new Works(
                        application.product(),
                        groups == null
                                ? Set.of()
                                : groups.stream()
                                        .filter(group -> !resisted.contains(group))
                                        .collect(Collectors.toCollection(TreeSet::new))));
            }
        }
        return judge(weed.weed(), works, resisted, doubtful, nearly(at, herbicides, weed.weed()));
    }

    /** What the best of the products that do not count as working is written down with; empty where none is rated. */
    private static String nearly(Case at, List<Application> herbicides, String weed) {
        return herbicides.stream()
                .flatMap(one -> Kill.at(one.rate(), at.index().kills(one.product(), weed)).stream())
                .filter(kill -> !kill.effective())
                .max(Comparator.comparingDouble(Kill::share))
                .map(kill -> " " + kill.product() + " at " + kill.rate().text() + "/ac takes "
                        + Numbers.read(Math.floor(kill.share() * 1000 + 1e-9) / 10)
                        + " % of it on the mean of the control sheet, and only from "
                        + Numbers.read(100 * Kill.EFFECTIVE) + " % on does a product count as working here.")
                .orElse("");
    }

    /** The groups of a product; null where the book or the reference data don't tell them all. */
    private static @Nullable Set<String> groups(Case at, String product) {
        return ProductGroups.of(at.index().actives(product)).orElse(null);
    }

    private Finding judge(String weed, List<Works> works, Set<String> resisted, boolean doubtful, String nearly) {
        Set<String> groups =
                works.stream().flatMap(one -> one.groups().stream()).collect(Collectors.toCollection(TreeSet::new));
        String found = groups.isEmpty() ? "No site of action" : "Group " + String.join(" and ", groups);
        String says = found + " works on " + weed + " at the planned rates"
                + (resisted.isEmpty() ? "" : "; it resists group " + String.join(" and ", resisted)) + "."
                + (groups.size() < FEWEST ? nearly : "");
        return finding(weed, says, works, groups, resisted, doubtful)
                .against(groups.size(), FEWEST, "sites of action")
                .standingIn("Norsworthy et al. 2012; two as the floor is common practice");
    }

    private Finding finding(
            String weed, String says, List<Works> works, Set<String> groups, Set<String> resisted, boolean doubtful) {
        if (groups.size() < FEWEST && doubtful) {
            return unknown(
                    weed,
                    says + " A rate, content or group that is not known may add one.",
                    "Enter rates and contents, and read the group number on the label.");
        }
        if (groups.size() < FEWEST) {
            return conditional(
                    weed,
                    says,
                    "Add a product of another group that works on " + weed
                            + ", or take out by other means what survives.");
        }
        boolean onePremix = works.stream()
                        .filter(one -> !one.groups().isEmpty())
                        .map(Works::product)
                        .distinct()
                        .count()
                == 1;
        if (onePremix) {
            return conditional(
                    weed,
                    says + " All of them come from one product.",
                    "Make sure each partner of that product controls " + weed + " by itself.");
        }
        return resisted.isEmpty() && groups.size() == FEWEST
                ? conditional(
                        weed,
                        says + " Whether it resists any here nobody has written.",
                        "Scout for survivors two weeks after each pass, and write down what " + weed + " resists.")
                : clear(weed, says);
    }
}
