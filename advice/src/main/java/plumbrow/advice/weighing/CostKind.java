package plumbrow.advice.weighing;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.CostShares;
import plumbrow.advice.field.Farm;
import plumbrow.advice.shelf.Product;

/** What a cost of a program is paid for, as leases part it. */
public enum CostKind {
    /** Seed and what is put on it before it is sown. */
    SEED,
    /** Herbicides, and the adjuvants that go with sprays. */
    HERBICIDE,
    INSECTICIDE,
    FUNGICIDE,
    /** Machine, labour or custom charge of a pass. */
    TRIP,
    /** What an insurance pays the operator: below 0, and his alone. */
    PAYMENT;

    /** The operator's share of such a cost on a farm [0 to 1]. */
    public double operatorShare(Farm farm) {
        if (this == PAYMENT) {
            return 1;
        }
        Double own = parted(farm.shares());
        return own == null ? farm.costShare() : own;
    }

    private @Nullable Double parted(CostShares shares) {
        return switch (this) {
            case SEED -> shares.seed();
            case HERBICIDE -> shares.herbicide();
            case INSECTICIDE -> shares.insecticide();
            case FUNGICIDE -> shares.fungicide();
            case TRIP -> shares.trips();
            case PAYMENT -> null;
        };
    }

    /** What buying a product is. */
    public static CostKind of(Product product) {
        return switch (product.kind()) {
            case SEED, SEED_TREATMENT -> SEED;
            case INSECTICIDE -> INSECTICIDE;
            case HERBICIDE, ADJUVANT -> HERBICIDE;
            case FUNGICIDE -> FUNGICIDE;
        };
    }
}
