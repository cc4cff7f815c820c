package plumbrow.advice.weighing;

import static plumbrow.science.figure.Numbers.plain;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.SavedSeed;
import plumbrow.advice.shelf.Seed;
import plumbrow.science.economics.SavedSeedCost;
import plumbrow.science.economics.SeedCost;

/** Seed by the acre: seeds, weight, bushels and bags turned into one another by what the seeds sheet says. */
public final class SeedCosts {
    private SeedCosts() {}

    static CostLine of(Seed seed, Product product, Amount rate) {
        return seed.saved() == null ? bought(seed, product, rate) : saved(seed, seed.saved(), rate);
    }

    private static CostLine bought(Seed seed, Product product, Amount rate) {
        String label = "Seed: " + product.name();
        String price =
                "$" + plain(product.priceUsd()) + "/" + product.pricedPer().symbol();
        if (product.pricedPer().dimension() == Dimension.UNITS && rate.unit().dimension() != Dimension.UNITS) {
            double perUnit = needed(seed.seedsPerUnit(), "seeds per unit")
                    * product.pricedPer().inBase();
            double seeds = seeds(seed, rate);
            return new CostLine(
                    CostKind.SEED,
                    label,
                    price + " ÷ " + plain(perUnit) + " seeds/unit × " + plain(seeds) + " seeds/ac",
                    SeedCost.usdPerAcre(product.priceUsd(), perUnit, seeds));
        }
        double sold = rate.unit().dimension() == product.pricedPer().dimension()
                ? rate.in(product.pricedPer()).value()
                : pounds(seed, rate) / poundsPer(seed, product);
        return new CostLine(
                CostKind.SEED,
                label,
                rate.text() + "/ac, " + plain(sold) + " " + product.pricedPer().symbol() + "/ac × " + price,
                sold * product.priceUsd());
    }

    /** Saved seed counted in seeds means live seeds wanted: what won't germinate is drilled on top. */
    private static CostLine saved(Seed seed, SavedSeed saved, Amount rate) {
        double perBushel = seed.crop().poundsPerBushel();
        boolean live = rate.unit().dimension() == Dimension.SEEDS;
        double pounds = live
                ? SavedSeedCost.seedsPerAcre(rate.inBase(), seed.germinationPct() / 100)
                        / needed(seed.seedsPerPound(), "seeds per pound")
                : pounds(seed, rate);
        double bushels = pounds / perBushel;
        double drawn = bushels / (1 - saved.cleanoutPct() / 100);
        double seedUsd = SavedSeedCost.usdPerAcre(
                bushels,
                saved.cleanoutPct() / 100,
                saved.binPriceUsdPerBu(),
                saved.cleaningUsdPerBu(),
                saved.treatmentUsdPerBu());
        String planted = live
                ? rate.text() + "/ac live ÷ " + plain(seed.germinationPct()) + " % germination = " + plain(bushels)
                        + " bu/ac planted, "
                : rate.text() + "/ac, ";
        return new CostLine(
                CostKind.SEED,
                "Saved seed: " + seed.product(),
                planted + plain(drawn) + " bu/ac drawn × $"
                        + plain(saved.binPriceUsdPerBu() + saved.cleaningUsdPerBu()) + "/bu bin price and cleaning + "
                        + plain(bushels) + " bu/ac × $" + plain(saved.treatmentUsdPerBu()) + "/bu treatment + $"
                        + plain(saved.testsUsd()) + " tests ÷ " + plain(saved.lotAcres()) + " ac",
                seedUsd + saved.testsUsd() / saved.lotAcres());
    }

    /** Seeds dropped on an acre, of bought or saved seed. */
    public static double dropped(Seed seed, Amount rate) {
        boolean live = seed.saved() != null && rate.unit().dimension() == Dimension.SEEDS;
        return live ? SavedSeedCost.seedsPerAcre(rate.inBase(), seed.germinationPct() / 100) : seeds(seed, rate);
    }

    private static double seeds(Seed seed, Amount rate) {
        return switch (rate.unit().dimension()) {
            case SEEDS -> rate.inBase();
            case UNITS -> rate.inBase() * needed(seed.seedsPerUnit(), "seeds per unit");
            case MASS, BUSHELS -> pounds(seed, rate) * needed(seed.seedsPerPound(), "seeds per pound");
            case VOLUME ->
                throw new IllegalArgumentException(
                        "seed is not measured in " + rate.unit().symbol());
        };
    }

    /** Pounds of seed on an acre. */
    public static double pounds(Seed seed, Amount rate) {
        return switch (rate.unit().dimension()) {
            case MASS -> rate.inBase();
            case BUSHELS -> rate.inBase() * seed.crop().poundsPerBushel();
            case SEEDS, UNITS -> seeds(seed, rate) / needed(seed.seedsPerPound(), "seeds per pound");
            case VOLUME ->
                throw new IllegalArgumentException(
                        "seed is not measured in " + rate.unit().symbol());
        };
    }

    /** Pounds in one of the unit the seed is priced for. */
    private static double poundsPer(Seed seed, Product product) {
        return pounds(seed, new Amount(1, product.pricedPer()));
    }

    private static double needed(@Nullable Double value, String what) {
        if (value == null) {
            throw new IllegalArgumentException("the seeds sheet gives no " + what);
        }
        return value;
    }
}
