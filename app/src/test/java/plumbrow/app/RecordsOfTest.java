package plumbrow.app;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Shelf;

/** An application on the one field of {@link SmallSeason}, as somebody types it. */
public final class RecordsOfTest {
    public static final String PRODUCT = "Stonefly 3G";
    public static final Instant NOW = Instant.parse("2027-06-01T12:00:00Z");

    private RecordsOfTest() {}

    /** Half the field, 3 lb/ac on 40 ac: 120 lb. */
    public static Map<String, String> typed(Map<String, String> otherwise) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("field", "North 80");
        typed.put("date", "2027-05-02");
        typed.put("start", "08:10");
        typed.put("end", "11:40");
        typed.put("acres", "40");
        typed.put("product_1", PRODUCT);
        typed.put("rate_1", "3");
        typed.put("rate_unit_1", "lb/ac");
        typed.put("applicator", "S. Lind");
        typed.putAll(otherwise);
        return typed;
    }

    /** The season with so many pounds of the product in the shed. */
    public static Season stocked(Season season, double pounds) {
        Shelf shelf = season.shelf();
        List<Product> products = new ArrayList<>(shelf.products());
        products.replaceAll(product -> product.name().equals(PRODUCT)
                ? new Product(
                        product.name(),
                        product.kind(),
                        product.priceUsd(),
                        product.pricedPer(),
                        new Amount(pounds, FarmUnit.LB),
                        product.registration(),
                        product.states(),
                        product.excludedCounties(),
                        product.labelDate(),
                        product.source())
                : product);
        return season.withShelf(shelf.withProducts(products));
    }
}
