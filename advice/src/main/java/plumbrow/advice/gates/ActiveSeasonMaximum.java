package plumbrow.advice.gates;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.ActiveName;
import plumbrow.science.figure.Numbers;

/**
 * Whether an active ingredient stays within its season maximum, counted over every product of the program.
 *
 * <p>Protects the law. Two products with the same ingredient fill one cap. Each label in the program is held to on its
 * own basis, active ingredient or acid equivalent, so the tightest decides:
 *
 * <pre>  lb/ac = Σ rate × lb active per gal or lb (× lb acid per lb active)</pre>
 *
 * <p>Barred once what is known passes a cap. Unknown where a label's cap, a product's content, a rate or an acid ratio is
 * missing. A pass over part of the field counts in full, and so does what the log says went on this season.
 *
 * <p>Source: the labels. Needs: content of each product, and the season maximum of each ingredient on each label.
 */
final class ActiveSeasonMaximum extends Question {
    ActiveSeasonMaximum() {
        super(
                "active-season-maximum",
                Protects.LAW,
                "Does each active ingredient stay within its season maximum over all products?");
    }

    @Override
    public List<Finding> check(Case at) {
        List<Application> applications = at.all();
        Set<String> products =
                applications.stream().map(Application::product).collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> planned = at.planned().stream().map(Application::product).collect(Collectors.toSet());
        List<Finding> findings = new ArrayList<>(contentUnread(at, products));
        ActiveTally.ingredients(at.index(), products).forEach((ingredient, holders) -> {
            if (holders.stream().anyMatch(planned::contains)) {
                holders.forEach(product -> findings.addAll(judge(at, applications, ingredient, product, holders)));
            }
        });
        return findings;
    }

    private List<Finding> judge(
            Case at, List<Application> applications, String ingredient, String product, Set<String> holders) {
        List<ActiveLimit> limits = at.index().activeLimits(product).stream()
                .filter(limit ->
                        limit.crop() == at.field().crop() && limit.ingredient().equals(ingredient))
                .toList();
        boolean known = limits.stream().anyMatch(limit -> limit.seasonMaxPounds() != null);
        Optional<String> none =
                at.index().noMaximum(product, at.field().crop(), named -> ActiveName.same(named, ingredient));
        if (!known && none.isPresent()) {
            return List.of(clear(
                            subject(ingredient, product),
                            "The " + product + " label was read and prints no season maximum of " + ingredient + ".")
                    .standingIn(none.get()));
        }
        return limits.isEmpty()
                ? List.of(unread(ingredient, product, at.field().crop()))
                : limits.stream()
                        .map(limit -> judge(at.index(), applications, holders, limit))
                        .toList();
    }

    private Finding judge(SeasonIndex index, List<Application> applications, Set<String> products, ActiveLimit limit) {
        Double most = limit.seasonMaxPounds();
        if (most == null) {
            return unread(limit.ingredient(), limit.product(), limit.crop());
        }
        ActiveTally tally = ActiveTally.of(index, applications, limit.ingredient(), limit.basis());
        String unit = "lb " + limit.basis().word() + "/ac";
        String total = Numbers.read(tally.pounds()) + " " + unit + " from " + String.join(" and ", products);
        String cap = "the " + limit.product() + " label allows " + Numbers.read(most) + " " + unit + " a season";
        String subject = subject(limit.ingredient(), limit.product());
        if (Rounding.above(tally.pounds(), most)) {
            return Finding.of(this, Standing.BARRED, subject, total + ", but " + cap + ".")
                    .against(tally.pounds(), most, unit)
                    .standingIn(limit.source())
                    .clearedBy("Cut " + limit.ingredient() + " by " + Numbers.read(tally.pounds() - most) + " " + unit
                            + ".");
        }
        if (!tally.uncounted().isEmpty()) {
            String uncounted =
                    String.join(" and ", tally.uncounted().stream().sorted().toList());
            return Finding.of(
                            this,
                            Standing.UNKNOWN,
                            subject,
                            "How much " + limit.ingredient() + " comes from " + uncounted + " in " + unit
                                    + " is not known; " + cap + ".")
                    .standingIn(limit.source())
                    .clearedBy("Look up the content per gallon or pound of " + uncounted
                            + (limit.basis() == ActiveLimit.Basis.ACID_EQUIVALENT ? ", with its acid equivalent" : "")
                            + ", and write its rate in that kind of unit.");
        }
        return Finding.of(this, Standing.CLEAR, subject, total + "; " + cap + ".")
                .against(tally.pounds(), most, unit)
                .standingIn(limit.source());
    }

    private Finding unread(String ingredient, String product, Crop crop) {
        return Finding.of(
                        this,
                        Standing.UNKNOWN,
                        subject(ingredient, product),
                        "The most " + ingredient + " a season on " + crop.word() + " has not been read on the "
                                + product + " label.")
                .clearedBy("Look up the season maximum of " + ingredient + " from all products on the " + product
                        + " label.");
    }

    /** Products of whose ingredients one or all are missing in the book: a cap names one that no content row does. */
    private List<Finding> contentUnread(Case at, Set<String> products) {
        return products.stream()
                .flatMap(product -> {
                    List<String> known = at.index().actives(product).stream()
                            .map(content -> content.ingredient())
                            .toList();
                    Stream<String> missing = known.isEmpty()
                            ? Stream.of("active ingredient")
                            : at.index().activeLimits(product).stream()
                                    .filter(limit -> limit.crop() == at.field().crop())
                                    .map(ActiveLimit::ingredient)
                                    .filter(ingredient -> !known.contains(ingredient))
                                    .distinct();
                    return missing.map(what -> Finding.of(
                                    this,
                                    Standing.UNKNOWN,
                                    product,
                                    "How much " + what + " is in " + product + " is not in the book.")
                            .clearedBy("Copy the ingredient statement of the " + product + " label."));
                })
                .toList();
    }

    private static String subject(String ingredient, String product) {
        return ingredient + ", label of " + product;
    }
}
