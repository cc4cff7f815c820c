package plumbrow.advice.nextseason;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Done;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Seed;

/**
 * The shelf with what the log left in the shed: what stood there on the day of the assumptions less each line of the log from then
 * on, times the acres of its field. What was bought meanwhile nobody has written down; what would be below nothing is nothing.
 */
record ShedStock(List<Product> products, List<Stock> changed, List<String> cautions) {
    static ShedStock of(Season season, LocalDate until) {
        List<Product> products = new ArrayList<>();
        List<Stock> changed = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        for (Product product : season.shelf().products()) {
            Amount before = product.onHand();
            List<Done> lines = season.work().log().stream()
                    .filter(line -> line.made()
                            && line.product().equals(product.name())
                            && !line.date().isBefore(season.asOf())
                            && !line.date().isAfter(until))
                    .toList();
            if (before == null || lines.isEmpty()) {
                products.add(product);
                continue;
            }
            Amount after = left(season, product, before, lines, cautions);
            products.add(holding(product, after));
            changed.add(new Stock(product.name(), before, after, lines.size()));
        }
        return new ShedStock(products, changed, cautions);
    }

    private static @Nullable Amount left(
            Season season, Product product, Amount before, List<Done> lines, List<String> cautions) {
        double taken = 0;
        for (Done line : lines) {
            OptionalDouble of = taken(season, before, line);
            if (of.isEmpty()) {
                cautions.add("What is left of " + product.name() + " can't be told, since the log has it by the "
                        + line.rate().unit().symbol() + " and the shed by the "
                        + before.unit().symbol() + ": look in the shed.");
                return null;
            }
            taken += of.getAsDouble();
        }
        double left = before.inBase() - taken;
        if (left < -1e-9 * before.inBase()) {
            cautions.add("The log took more of " + product.name() + " than the " + before.text()
                    + " that stood in the shed; some was bought. Look what is left.");
        }
        double rounded = Math.max(0, left) / before.unit().inBase();
        return new Amount(Math.round(rounded * 1e6) / 1e6, before.unit());
    }

    /** What a line took, in the base unit of what is in the shed. */
    private static OptionalDouble taken(Season season, Amount shed, Done line) {
        double acres = season.field(line.field()).map(Field::acres).orElse(0.0) * line.sharePct() / 100;
        Amount rate = line.rate();
        if (rate.comparableWith(shed)) {
            return OptionalDouble.of(rate.inBase() * acres);
        }
        Double perUnit =
                season.shelf().seed(line.product()).map(Seed::seedsPerUnit).orElse(null);
        Double perPound =
                season.shelf().seed(line.product()).map(Seed::seedsPerPound).orElse(null);
        if (rate.unit().dimension() == Dimension.SEEDS
                && shed.unit().dimension() == Dimension.UNITS
                && perUnit != null) {
            return OptionalDouble.of(rate.inBase() * acres / perUnit);
        }
        if (rate.unit().dimension() == Dimension.SEEDS
                && shed.unit().dimension() == Dimension.MASS
                && perPound != null) {
            return OptionalDouble.of(rate.inBase() * acres / perPound);
        }
        return OptionalDouble.empty();
    }

    private static Product holding(Product product, @Nullable Amount onHand) {
        return new Product(
                product.name(),
                product.kind(),
                product.priceUsd(),
                product.pricedPer(),
                onHand,
                product.registration(),
                product.states(),
                product.excludedCounties(),
                product.labelDate(),
                product.source());
    }

    /** The same product with another source. */
    static Product sourced(Product product, String source) {
        return new Product(
                product.name(),
                product.kind(),
                product.priceUsd(),
                product.pricedPer(),
                product.onHand(),
                product.registration(),
                product.states(),
                product.excludedCounties(),
                product.labelDate(),
                source);
    }
}
