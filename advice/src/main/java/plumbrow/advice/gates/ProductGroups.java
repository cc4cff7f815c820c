package plumbrow.advice.gates;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;

/** The groups of action that products of one kind hold, as far as the reference data know them. */
final class ProductGroups {
    private ProductGroups() {}

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
