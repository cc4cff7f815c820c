package plumbrow.advice.weighing;

import static plumbrow.science.figure.Numbers.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Seed;

/** The cost of a program, line by line, averaged over the acres of the field. */
final class ProgramCosts {
    private ProgramCosts() {}

    static List<CostLine> of(Season season, Program program, List<Pass> passes) {
        List<CostLine> lines = new ArrayList<>();
        passes.forEach(pass -> lines.addAll(of(season, program, pass)));
        replantPayment(season, program).ifPresent(lines::add);
        return lines;
    }

    /** What one pass costs where it is made. */
    static List<CostLine> of(Season season, Program program, Pass pass) {
        List<CostLine> lines = new ArrayList<>();
        if (pass.product() != null) {
            lines.add(product(season, program, pass, pass.product()));
        }
        if (pass.chargeUsdPerAcre() > 0) {
            lines.add(new CostLine(
                    CostKind.TRIP,
                    "Pass: " + pass.kind().word() + (pass.product() == null ? "" : ", " + pass.product()),
                    "$" + plain(pass.chargeUsdPerAcre()) + "/ac" + share(pass),
                    pass.chargeUsdPerAcre() * pass.sharePct() / 100));
        }
        return lines;
    }

    /** What the insurance pays for the acres that are replanted. */
    private static Optional<CostLine> replantPayment(Season season, Program program) {
        double share = Planting.of(season, program).replantedShare();
        return season.work()
                .stand(program.field())
                .flatMap(count -> Optional.ofNullable(count.paymentUsdPerAcre()))
                .filter(payment -> payment > 0 && share > 0)
                .map(payment -> new CostLine(
                        CostKind.PAYMENT,
                        "Insurance payment for replanting",
                        "−$" + plain(payment) + "/ac"
                                + (share == 1 ? "" : " × " + plain(share * 100) + " % of the acres"),
                        -payment * share));
    }

    private static CostLine product(Season season, Program program, Pass pass, String name) {
        Product product =
                season.shelf().product(name).orElseThrow(() -> gap(program, "'" + name + "' is not on the shelf"));
        Amount rate = pass.rate();
        if (rate == null) {
            throw gap(program, "pass " + pass.number() + " gives no rate for '" + name + "'");
        }
        CostLine treated = cost(season.shelf().seed(name).orElse(null), product, rate, program);
        return new CostLine(
                CostKind.of(product),
                treated.label(),
                treated.arithmetic() + share(pass),
                treated.usdPerAcre() * pass.sharePct() / 100);
    }

    private static CostLine cost(@Nullable Seed seed, Product product, Amount rate, Program program) {
        try {
            return seed == null ? bought(product, rate) : SeedCosts.of(seed, product, rate);
        } catch (IllegalArgumentException trouble) {
            throw gap(program, "'" + product.name() + "': " + trouble.getMessage());
        }
    }

    private static CostLine bought(Product product, Amount rate) {
        Amount sold = rate.in(product.pricedPer());
        String converted = rate.unit() == product.pricedPer() ? "" : " (" + sold.text() + "/ac)";
        return new CostLine(
                CostKind.of(product),
                capital(product.kind().word()) + ": " + product.name(),
                rate.text() + "/ac" + converted + " × $" + plain(product.priceUsd()) + "/"
                        + product.pricedPer().symbol(),
                sold.value() * product.priceUsd());
    }

    private static String share(Pass pass) {
        return pass.sharePct() == 100 ? "" : " × " + plain(pass.sharePct()) + " % of the acres";
    }

    static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static SeasonGapException gap(Program program, String what) {
        return new SeasonGapException(
                program.field() + ", program '" + program.name() + "' can't be weighed: " + what + ".");
    }
}
