package plumbrow.advice.gates;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.shelf.ProductKind;

/**
 * How many plants of a weed would survive a program if they no longer gave way to one site of action that it leans on.
 *
 * <pre>  survivors(g) = Π (1 − control) over the herbicides that do not contain group g</pre>
 *
 * <p>The group for which most survive is told: the one that the program selects for hardest. A product of several groups
 * counts for nothing against a plant that resists one of them, since the book can't tell its partners apart; a group
 * that the population resists already counts for nothing at all. Control is that of the highest rate in the book not
 * above the planned one, at its mean.
 *
 * @param weed the weed
 * @param group the site of action
 * @param share share of the resistant plants that survive [0 to 1]
 */
public record Escape(String weed, String group, double share) {

    /** The worst over the weeds named and the groups planned; empty without weeds or herbicides of known group. */
    static Optional<Escape> worst(Case at, Set<String> weeds) {
        Map<Application, Set<String>> groups = new LinkedHashMap<>();
        for (Application application : at.planned()) {
            boolean herbicide = at.index()
                    .product(application.product())
                    .filter(product -> product.kind() == ProductKind.HERBICIDE)
                    .isPresent();
            if (herbicide) {
                groups.put(application, ProductGroups.of(at, List.of(application.product()), ProductKind.HERBICIDE));
            }
        }
        Set<String> all =
                groups.values().stream().flatMap(Collection::stream).collect(Collectors.toCollection(TreeSet::new));
        return weeds.stream()
                .flatMap(weed -> all.stream().map(group -> of(at, weed, group, groups)))
                .reduce((one, other) -> other.share() > one.share() ? other : one);
    }

    private static Escape of(Case at, String weed, String group, Map<Application, Set<String>> groups) {
        Set<String> resisted = at.index().resistance(at.field().name()).stream()
                .filter(row -> row.weed().equals(weed))
                .map(row -> Ingredient.sameSite(row.group()))
                .collect(Collectors.toSet());
        double left = 1;
        for (Map.Entry<Application, Set<String>> entry : groups.entrySet()) {
            Set<String> own = entry.getValue();
            if (!own.isEmpty() && !own.contains(group) && own.stream().noneMatch(resisted::contains)) {
                Application application = entry.getKey();
                left *= 1
                        - Kill.at(application.rate(), at.index().kills(application.product(), weed))
                                .map(Kill::share)
                                .orElse(0.0);
            }
        }
        return new Escape(weed, group, left);
    }

    /** The same for a program on a field. */
    public static Optional<Escape> worst(Gates gates, Field field, Program program, Set<String> weeds) {
        return worst(gates.at(field, program), weeds);
    }
}
