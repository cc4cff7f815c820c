package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.SavedSeed;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;

/** Seed by the acre, against rows worked apart from this code. */
class ProgramCostsTest {
    private static final Distribution NONE = new Distribution.Fixed(0);

    @Test
    @DisplayName("corn $300 for 80,000, 34,000/ac: $127.50; soybean $58 for 140,000, 150,000/ac: $62.14")
    void bought() {
        assertThat(cost(Crop.CORN, 80_000.0, null, 300, FarmUnit.UNIT, new Amount(34_000, FarmUnit.SEEDS)))
                .isCloseTo(127.50, within(0.005));
        assertThat(cost(Crop.SOYBEAN, 140_000.0, null, 58, FarmUnit.UNIT, new Amount(150_000, FarmUnit.SEEDS)))
                .isCloseTo(62.14, within(0.005));
    }

    @Test
    @DisplayName("the same seed in other units costs the same")
    void units() {
        double bySeeds = cost(Crop.WHEAT, 50_000.0, 12_000.0, 10, FarmUnit.UNIT, new Amount(1_200_000, FarmUnit.SEEDS));
        assertThat(cost(Crop.WHEAT, 50_000.0, 12_000.0, 10, FarmUnit.UNIT, new Amount(1_200, FarmUnit.THOUSAND_SEEDS)))
                .isCloseTo(bySeeds, within(1e-9));
        assertThat(cost(Crop.WHEAT, 50_000.0, 12_000.0, 10, FarmUnit.UNIT, new Amount(100, FarmUnit.LB)))
                .isCloseTo(bySeeds, within(1e-9));
        assertThat(cost(Crop.WHEAT, 50_000.0, 12_000.0, 10, FarmUnit.UNIT, new Amount(24, FarmUnit.UNIT)))
                .isCloseTo(bySeeds, within(1e-9));
        double byPound = cost(Crop.WHEAT, null, 12_000.0, 0.2, FarmUnit.LB, new Amount(1_200_000, FarmUnit.SEEDS));
        assertThat(byPound).isCloseTo(20, within(1e-9));
        assertThat(cost(Crop.WHEAT, null, 12_000.0, 12, FarmUnit.BU, new Amount(100, FarmUnit.LB)))
                .isCloseTo(20, within(1e-9));
    }

    @Test
    @DisplayName("saved soybean $17.71/ac, saved wheat $19.30/ac")
    void saved() {
        assertThat(saved(Crop.SOYBEAN, 2_800, 85, 130_000, new SavedSeed(3, 10.50, 1.50, 6, 8, 60, 160)))
                .isCloseTo(17.71, within(0.005));
        assertThat(saved(Crop.WHEAT, 13_500, 88, 1_200_000, new SavedSeed(3, 5.80, 1.25, 3.50, 10, 45, 200)))
                .isCloseTo(19.30, within(0.005));
    }

    @Test
    @DisplayName("seed without what the price needs is refused in words")
    void lacking() {
        assertThatThrownBy(() -> cost(Crop.CORN, null, null, 300, FarmUnit.UNIT, new Amount(34_000, FarmUnit.SEEDS)))
                .hasMessage("the seeds sheet gives no seeds per unit");
    }

    private static double cost(
            Crop crop,
            @Nullable Double perUnit,
            @Nullable Double perPound,
            double price,
            FarmUnit pricedPer,
            Amount rate) {
        return SeedCosts.of(seed(crop, perUnit, perPound, 95, null), product(price, pricedPer), rate)
                .usdPerAcre();
    }

    private static double saved(Crop crop, double perPound, double germination, double live, SavedSeed saved) {
        return SeedCosts.of(
                        seed(crop, null, perPound, germination, saved),
                        product(0, FarmUnit.BU),
                        new Amount(live, FarmUnit.SEEDS))
                .usdPerAcre();
    }

    private static Product product(double price, FarmUnit pricedPer) {
        return new Product("S", ProductKind.SEED, price, pricedPer, null, null, null, null, null, "invented");
    }

    private static Seed seed(
            Crop crop,
            @Nullable Double perUnit,
            @Nullable Double perPound,
            double germination,
            @Nullable SavedSeed saved) {
        return new Seed(
                "S",
                crop,
                perUnit,
                perPound,
                germination,
                List.of(),
                0,
                new RefugeRule(RefugeRule.Form.NONE, null, null, null, ""),
                NONE,
                new Distribution.Fixed(100),
                saved,
                SeedRights.UNASKED);
    }
}
