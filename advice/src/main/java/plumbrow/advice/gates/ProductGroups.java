package plumbrow.advice.gates;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Shelf;

/** The groups of action that products of one kind hold, as far as the reference data know them. */
public final class ProductGroups {
    private ProductGroups() {}

    /** The groups of a product by the numbers of today; empty where its content or the group of a part is not known. */
    public static Optional<Set<String>> of(Shelf shelf, String product) {
        return of(shelf.actives(product));
    }

    static Optional<Set<String>> of(List<ActiveContent> contents) {
        List<Ingredient> ingredients = contents.stream()
                .map(content -> Ingredient.of(content.ingredient()))
                .toList();
        return ingredients.isEmpty()
                        || ingredients.stream().anyMatch(one -> one.groups().isEmpty())
                ? Optional.empty()
                : Optional.of(ingredients.stream()
                        .flatMap(one -> one.groups().stream())
                        .collect(Collectors.toSet()));
    }

    /** The number that a group of action has today: 7, 8 and 16 were retired in 2020. */
    public static String today(String group) {
        return Ingredient.sameSite(group);
    }

    /** The insecticide groups in an insecticide or a seed treatment. */
    static Set<String> insecticide(Case at, String product) {
        return at.index()
                .product(product)
                .map(Product::kind)
                .filter(kind -> kind == ProductKind.INSECTICIDE || kind == ProductKind.SEED_TREATMENT)
                .map(kind -> at.index().actives(product).stream()
                        .map(ActiveContent::ingredient)
                        .filter(ingredient -> kind == ProductKind.INSECTICIDE || Ingredient.isInsecticide(ingredient))
                        .flatMap(ingredient -> Ingredient.of(ingredient).groups().stream())
                        .collect(Collectors.toCollection(TreeSet::new)))
                .orElseGet(TreeSet::new);
    }

    static Set<String> of(Case at, Collection<String> products, ProductKind kind) {
        return products.stream()
                .distinct()
                .filter(product -> at.index()
                        .product(product)
                        .map(Product::kind)
                        .filter(one -> one == kind)
                        .isPresent())
                .flatMap(product -> at.index().actives(product).stream())
                .map(ActiveContent::ingredient)
                .flatMap(ingredient -> Ingredient.of(ingredient).groups().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
