package plumbrow.app.book;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Shelf;
import plumbrow.app.book.RecordRows.Taken;

/** What a record takes from the shed, and what goes back when it was wrong. Stock that nobody has counted stays unknown. */
final class StockOfRecords {
    private StockOfRecords() {}

    /** What each product of a record takes: its total, but no more than there is. */
    static List<Taken> taken(Season season, ApplicationRecord record) {
        return record.products().stream().map(one -> taken(season, one)).toList();
    }

    private static Taken taken(Season season, RecordedProduct used) {
        Amount there =
                season.shelf().product(used.product()).map(Product::onHand).orElse(null);
        return new Taken(
                used.product(),
                there == null || !there.comparableWith(used.total())
                        ? null
                        : new Amount(
                                Math.min(
                                        there.value(),
                                        used.total().in(there.unit()).value()),
                                there.unit()));
    }

    static UnaryOperator<Season> off(List<Taken> taken) {
        return season -> changed(season, taken, -1);
    }

    static UnaryOperator<Season> back(List<Taken> taken) {
        return season -> changed(season, taken, 1);
    }

    private static Season changed(Season season, List<Taken> taken, int sign) {
        Shelf shelf = season.shelf();
        List<Product> products = new ArrayList<>(shelf.products());
        products.replaceAll(product -> {
            for (Taken one : taken) {
                if (one.product().equals(product.name())) {
                    return with(product, one.taken(), sign);
                }
            }
            return product;
        });
        return products.equals(shelf.products()) ? season : season.withShelf(shelf.withProducts(products));
    }

    private static Product with(Product product, @Nullable Amount taken, int sign) {
        Amount there = product.onHand();
        if (there == null || taken == null || !there.comparableWith(taken)) {
            return product;
        }
        double left = there.value() + sign * taken.in(there.unit()).value();
        return new Product(
                product.name(),
                product.kind(),
                product.priceUsd(),
                product.pricedPer(),
                new Amount(rounded(left), there.unit()),
                product.registration(),
                product.states(),
                product.excludedCounties(),
                product.labelDate(),
                product.source());
    }

    /** Without the dust of arithmetic: no shed is known to the millionth. */
    private static double rounded(double amount) {
        return Math.max(0, Math.round(amount * 1e6) / 1e6);
    }
}
