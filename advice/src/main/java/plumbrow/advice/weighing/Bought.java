package plumbrow.advice.weighing;

import java.util.OptionalDouble;
import plumbrow.advice.program.Pass;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Seed;

/** How much of its product a pass takes from a bag, jug or bin that is bought. */
public final class Bought {
    private Bought() {}

    /**
     * Quantity per acre of the field, in the unit the product is priced for; empty for a pass without product or rate,
     * and for seed of one's own.
     *
     * @throws IllegalArgumentException where rate and price can't be turned into one another
     */
    public static OptionalDouble perAcre(Season season, Pass pass) {
        Amount rate = pass.rate();
        Product product = pass.product() == null
                ? null
                : season.shelf().product(pass.product()).orElse(null);
        if (rate == null || product == null) {
            return OptionalDouble.empty();
        }
        double share = pass.sharePct() / 100;
        Seed seed = season.shelf().seed(product.name()).orElse(null);
        if (seed == null) {
            return OptionalDouble.of(rate.in(product.pricedPer()).value() * share);
        }
        return seed.saved() != null || product.priceUsd() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(SeedCosts.of(seed, product, rate).usdPerAcre() / product.priceUsd() * share);
    }
}
