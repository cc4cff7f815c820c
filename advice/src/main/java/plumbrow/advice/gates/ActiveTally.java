package plumbrow.advice.gates;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit.Basis;

/**
 * How much of an ingredient a program puts on an acre, from all products together.
 *
 * @param pounds what is known of it [lb/ac on the basis asked for]
 * @param uncounted products whose part could not be counted
 */
record ActiveTally(double pounds, Set<String> uncounted) {
    ActiveTally {
        uncounted = Set.copyOf(uncounted);
    }

    /** The ingredients of a program's products, each with the products that hold it. */
    static Map<String, Set<String>> ingredients(SeasonIndex index, Set<String> products) {
        Map<String, Set<String>> found = new TreeMap<>();
        for (String product : products) {
            for (ActiveContent content : index.actives(product)) {
                found.computeIfAbsent(content.ingredient(), name -> new TreeSet<>())
                        .add(product);
            }
        }
        return found;
    }

    /** The ingredient over all applications, as pounds of active or of its acid. */
    static ActiveTally of(SeasonIndex index, List<Application> applications, String ingredient, Basis basis) {
        double pounds = 0;
        Set<String> uncounted = new TreeSet<>();
        for (Application application : applications) {
            for (ActiveContent content : index.actives(application.product())) {
                if (content.ingredient().equals(ingredient)) {
                    Double part = pounds(application.rate(), content, basis);
                    if (part == null) {
                        uncounted.add(application.product());
                    } else {
                        pounds += part;
                    }
                }
            }
        }
        return new ActiveTally(pounds, uncounted);
    }

    /** Pounds of an ingredient on an acre; null where rate, content or acid ratio don't tell. */
    static @Nullable Double pounds(@Nullable Amount rate, ActiveContent content, Basis basis) {
        if (rate == null || rate.unit().dimension() != content.per().dimension()) {
            return null;
        }
        double active = rate.in(content.per()).value() * content.pounds();
        Double acid = content.acidEquivalentRatio();
        return switch (basis) {
            case ACTIVE_INGREDIENT -> active;
            case ACID_EQUIVALENT -> acid == null ? null : Double.valueOf(active * acid);
        };
    }
}
