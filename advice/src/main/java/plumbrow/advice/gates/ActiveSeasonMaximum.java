package plumbrow.advice.gates;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.science.figure.Numbers;

/**
 * Whether an active ingredient stays within its season maximum, counted over every product of the course.
 *
 * <p>Protects the law. Two products with the same ingredient fill one cap. Each label in the course is held to on its
 * own basis, active ingredient or acid equivalent, so the tightest decides:
 *
 * <pre>  lb/ac = Σ rate × lb active per gal or lb (× lb acid per lb active)</pre>
 *
 * <p>Barred once what is known passes a cap. Unknown where a label's cap, a product's content, a rate or an acid ratio is
 * missing. A pass over part of the field counts in full.
 *
 * <p>Source: the labels. Needs: content of each product, and the season maximum of each ingredient on each label.
 */
final class ActiveSeasonMaximum implements Gate {

    @Override
    public String id() {
        return "active-season-maximum";
    }

    @Override
    public Protects protects() {
        return Protects.LAW;
    }

    @Override
    public String question() {
        return "Does each active ingredient stay within its season maximum over all products?";
    }

    @Override
    public List<Finding> check(Season season, Field field, Course course) {
        Map<String, List<Application>> byProduct = Application.byProduct(season, course);
        List<Application> applications = Application.of(season, course);
        List<Finding> findings = new ArrayList<>(contentUnread(season, field.crop(), byProduct.keySet()));
        ActiveTally.ingredients(season, byProduct.keySet())
                .forEach((ingredient, products) -> products.forEach(product -> {
                    List<ActiveLimit> limits = limits(season, field.crop(), product, ingredient);
                    if (limits.isEmpty()) {
                        findings.add(unread(ingredient, product, field.crop()));
                    }
                    limits.forEach(limit -> findings.add(judge(season, applications, products, limit)));
                }));
        return findings;
    }

    private Finding judge(Season season, List<Application> applications, Set<String> products, ActiveLimit limit) {
        Double most = limit.seasonMaxPounds();
        if (most == null) {
            return unread(limit.ingredient(), limit.product(), limit.crop());
        }
        ActiveTally tally = ActiveTally.of(season, applications, limit.ingredient(), limit.basis());
        String unit = "lb " + limit.basis().word() + "/ac";
        String total = Numbers.plain(tally.pounds()) + " " + unit + " from " + String.join(" and ", products);
        String cap = "the " + limit.product() + " label allows " + Numbers.plain(most) + " " + unit + " a season";
        String subject = subject(limit.ingredient(), limit.product());
        if (Rounding.above(tally.pounds(), most)) {
            return Finding.of(this, Standing.BARRED, subject, total + ", but " + cap + ".")
                    .against(tally.pounds(), most, unit)
                    .standingIn(limit.source())
                    .clearedBy("Cut " + limit.ingredient() + " by " + Numbers.plain(tally.pounds() - most) + " " + unit
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
    private List<Finding> contentUnread(Season season, Crop crop, Set<String> products) {
        return products.stream()
                .flatMap(product -> {
                    List<String> known = season.shelf().actives(product).stream()
                            .map(content -> content.ingredient())
                            .toList();
                    Stream<String> missing = known.isEmpty()
                            ? Stream.of("active ingredient")
                            : season.shelf().activeLimits().stream()
                                    .filter(limit -> limit.product().equals(product) && limit.crop() == crop)
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

    private static List<ActiveLimit> limits(Season season, Crop crop, String product, String ingredient) {
        return season.shelf().activeLimits().stream()
                .filter(limit -> limit.product().equals(product)
                        && limit.crop() == crop
                        && limit.ingredient().equals(ingredient))
                .toList();
    }

    private static String subject(String ingredient, String product) {
        return ingredient + ", label of " + product;
    }
}
