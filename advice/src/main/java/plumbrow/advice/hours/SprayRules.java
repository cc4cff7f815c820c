package plumbrow.advice.hours;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.HourRule.Kind;
import plumbrow.advice.hours.HourRule.Whose;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.advice.tank.HourLimit;

/**
 * All rules that an hour must pass before a tank goes out: those of the label of each product in it, of the state, of the farm, and
 * of good practice. What was not read on a label leaves every hour unknown. One more product only ever adds rules.
 */
public final class SprayRules {
    /** A most that stands for a label without such a limit, as the sheet of terms keeps it. */
    private static final double NONE = 999;

    private SprayRules() {}

    /**
     * The rules for products in one tank.
     *
     * @param leaves whether it goes on leaves; not known counts as yes
     */
    public static List<HourRule> of(
            Season season, Field field, List<String> products, boolean leaves, Practice practice) {
        List<HourRule> rules = new ArrayList<>();
        for (String product : products.stream().distinct().toList()) {
            label(season, field, product, rules);
            words(season, field, product, practice, rules);
        }
        for (HourLimit limit : season.work().means().tank().limits()) {
            boolean here = (limit.state() == null || limit.state().equals(field.state()))
                    && (limit.product() == null || products.contains(limit.product()));
            if (here) {
                limited(limit, rules);
            }
        }
        rules.addAll(practice.rules(leaves));
        return List.copyOf(rules);
    }

    private static void label(Season season, Field field, String product, List<HourRule> rules) {
        boolean labelled = season.shelf()
                .product(product)
                .map(one -> one.kind().underLabel())
                .orElse(true);
        if (!labelled) {
            return;
        }
        String owner = "label of " + product;
        Optional<UseTerms> terms = season.shelf().labels().terms(product, field.crop());
        if (terms.isEmpty()) {
            rules.add(HourRule.unread(
                    Kind.WIND,
                    owner,
                    "what the label asks of the day",
                    "the label, for " + field.crop().word()));
        } else {
            terms(owner, terms.get(), rules);
        }
        Optional<ProductCare> care = season.shelf().labels().care(product);
        Integer ahead = care.map(ProductCare::rainAheadHours).orElse(null);
        String source = care.map(ProductCare::source).orElse("the label");
        if (ahead == null) {
            rules.add(HourRule.unread(Kind.RAIN_FREE, owner, "whether it may go out ahead of rain", source));
        } else if (ahead > 0) {
            rules.add(label(Kind.RAIN_FREE, owner, (double) ahead, null, source));
        }
    }

    /** What the label says in its own words of the hours of the day and of inversions. */
    private static void words(Season season, Field field, String product, Practice practice, List<HourRule> rules) {
        boolean told = season.work().means().tank().limits().stream()
                .anyMatch(limit -> product.equals(limit.product())
                        && (limit.measure() == HourLimit.Measure.AFTER_SUNRISE
                                || limit.measure() == HourLimit.Measure.BEFORE_SUNSET));
        String owner = "label of " + product;
        for (LabelLimit limit : season.shelf().labels().limits()) {
            if (!limit.product().equals(product) || (limit.crop() != null && limit.crop() != field.crop())) {
                continue;
            }
            if (limit.kind() == LabelLimit.Kind.HOURS && !told) {
                rules.add(HourRule.unread(
                        Kind.DARK, owner, "its hours of day as numbers (“" + limit.value() + "”)", limit.source()));
            } else if (limit.kind() == LabelLimit.Kind.INVERSION) {
                rules.add(label(
                        Kind.INVERSION, owner, practice.afterSunriseH(), practice.beforeSunsetH(), limit.source()));
            }
        }
    }

    private static void terms(String owner, UseTerms terms, List<HourRule> rules) {
        Double low = terms.windLowestMph();
        Double high = terms.windHighestMph();
        if (low == null || high == null) {
            rules.add(HourRule.unread(
                    Kind.WIND,
                    owner,
                    low == null && high == null ? "wind" : low == null ? "lowest wind" : "highest wind",
                    terms.source()));
        }
        Double least = low == null || low == 0 ? null : low;
        Double most = high == null || high >= NONE ? null : high;
        if (least != null || most != null) {
            rules.add(label(Kind.WIND, owner, least, most, terms.source()));
        }
        Double warmest = terms.warmestF();
        if (warmest == null) {
            rules.add(HourRule.unread(Kind.AIR, owner, "highest air temperature", terms.source()));
        } else if (warmest < NONE) {
            rules.add(label(Kind.AIR, owner, null, warmest, terms.source()));
        }
        Double rainFree = terms.rainFreeHours();
        if (rainFree == null) {
            rules.add(HourRule.unread(Kind.RAIN_FREE, owner, "hours without rain after it", terms.source()));
        } else if (rainFree > 0) {
            rules.add(label(Kind.RAIN_FREE, owner, rainFree, null, terms.source()));
        }
    }

    private static HourRule label(
            Kind kind, String owner, @Nullable Double least, @Nullable Double most, String source) {
        return new HourRule(kind, Whose.LABEL, owner, least, most, "", source);
    }

    private static void limited(HourLimit limit, List<HourRule> rules) {
        Whose whose = limit.state() != null ? Whose.STATE : limit.product() != null ? Whose.LABEL : Whose.OWN;
        String owner = limit.state() != null
                ? "state of " + limit.state()
                : limit.product() != null ? "label of " + limit.product() : "the farm's own rule";
        Double least = limit.least();
        switch (limit.measure()) {
            case WIND -> rules.add(new HourRule(Kind.WIND, whose, owner, least, limit.most(), "", limit.source()));
            case AIR -> rules.add(new HourRule(Kind.AIR, whose, owner, least, limit.most(), "", limit.source()));
            case DELTA_T ->
                rules.add(new HourRule(Kind.DELTA_T, whose, owner, least, limit.most(), "", limit.source()));
            case AFTER_SUNRISE -> rules.add(new HourRule(Kind.DARK, whose, owner, least, null, "", limit.source()));
            case BEFORE_SUNSET -> rules.add(new HourRule(Kind.DARK, whose, owner, null, least, "", limit.source()));
            case RAIN_FREE -> rules.add(new HourRule(Kind.RAIN_FREE, whose, owner, least, null, "", limit.source()));
        }
    }
}
