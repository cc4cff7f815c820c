package plumbrow.app.desk.build;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.documents.workbook.form.RateUnit;

/** What can be done on a field: seeds of its crop, products of the shelf with what their labels allow on it, and work without a product. */
public record Choices(List<Choice> seeds, List<Choice> products) {
    /** Work that puts out no product; set apart from names of products by a sign that no name begins with. */
    static final String WORK = "=";

    /**
     * A product that a pass may put out.
     *
     * @param kind how it goes out: seed, spray or granule
     * @param unit the unit in which its rate is usually written; empty where that is not known
     * @param low lowest rate of the label in that unit; empty where unknown
     * @param high highest rate of the label in that unit; empty where unknown
     * @param methods ways the label allows; empty where it was not read for them
     */
    public record Choice(
            String product, String what, PassKind kind, String unit, String low, String high, List<String> methods) {
        /** "3 to 6 lb/ac by the label", or that it is unknown. */
        public String range() {
            if (kind == PassKind.SEED && low.isEmpty() && high.isEmpty()) {
                return "";
            }
            return low.isEmpty() && high.isEmpty()
                    ? "rates of the label unknown"
                    : (low.isEmpty() ? "up to " : low + " to ") + (high.isEmpty() ? "an unknown highest rate" : high)
                            + " " + unit + " by the label";
        }
    }

    static Choices of(Season season, Field field) {
        List<Choice> seeds = new ArrayList<>();
        List<Choice> products = new ArrayList<>();
        for (Product product : season.shelf().products()) {
            if (product.kind() == ProductKind.SEED) {
                season.shelf().seeds().stream()
                        .filter(seed -> seed.product().equals(product.name()) && seed.crop() == field.crop())
                        .findFirst()
                        .ifPresent(seed -> seeds.add(seed(product)));
            } else {
                products.add(product(season, field, product));
            }
        }
        return new Choices(List.copyOf(seeds), List.copyOf(products));
    }

    private static Choice seed(Product product) {
        return new Choice(
                product.name(),
                product.kind().word(),
                PassKind.SEED,
                unit(product.pricedPer() == FarmUnit.UNIT ? FarmUnit.THOUSAND_SEEDS : product.pricedPer()),
                "",
                "",
                List.of());
    }

    private static Choice product(Season season, Field field, Product product) {
        Optional<LabelUse> use = season.shelf().labelUses().stream()
                .filter(one -> one.product().equals(product.name()) && one.crop() == field.crop())
                .findFirst();
        List<String> methods = season.shelf().labels().terms().stream()
                .filter(one -> one.product().equals(product.name()) && one.crop() == field.crop())
                .findFirst()
                .map(UseTerms::methods)
                .stream()
                .flatMap(all -> Arrays.stream(Method.values()).filter(all::contains))
                .map(Method::word)
                .toList();
        Amount low = use.map(LabelUse::lowRate).orElse(null);
        Amount high = use.map(LabelUse::highRate).orElse(null);
        FarmUnit unit = high != null ? high.unit() : low != null ? low.unit() : product.pricedPer();
        return new Choice(
                product.name(),
                product.kind().word(),
                kind(product),
                unit(unit),
                number(low, unit),
                number(high, unit),
                methods);
    }

    /** Dry insecticides sold by weight go out as granules; a seed treatment goes out with the seed; all else is sprayed. */
    private static PassKind kind(Product product) {
        if (product.kind() == ProductKind.SEED_TREATMENT) {
            return PassKind.SEED;
        }
        boolean dry = product.pricedPer().dimension() == Dimension.MASS;
        return dry && product.kind() == ProductKind.INSECTICIDE ? PassKind.GRANULE : PassKind.SPRAY;
    }

    private static String unit(FarmUnit unit) {
        return RateUnit.perAcre(unit).text();
    }

    private static String number(@Nullable Amount amount, FarmUnit unit) {
        return amount == null || amount.unit() != unit ? "" : plain(amount.value());
    }

    static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    Optional<Choice> find(String product) {
        return Stream.concat(seeds.stream(), products.stream())
                .filter(choice -> choice.product().equals(product))
                .findFirst();
    }

    /** Kinds of work without a product. */
    public static List<PassKind> work() {
        return List.of(PassKind.TILLAGE, PassKind.SCOUTING, PassKind.HARVEST);
    }

    /** Every way of putting a product on. */
    public static List<String> methods() {
        return Arrays.stream(Method.values()).map(Method::word).toList();
    }

    /** Units in which rates are written. */
    public static List<String> units() {
        return Arrays.stream(FarmUnit.values()).map(Choices::unit).collect(Collectors.toList());
    }
}
