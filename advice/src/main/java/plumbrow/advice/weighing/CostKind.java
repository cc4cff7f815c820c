package plumbrow.advice.weighing;

import plumbrow.advice.shelf.Product;

/** What a cost of a course is paid for, as leases part it. */
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

    static CostKind of(Product product) {
        return switch (product.kind()) {
            case SEED, SEED_TREATMENT -> SEED;
            case INSECTICIDE -> INSECTICIDE;
            case HERBICIDE, ADJUVANT -> HERBICIDE;
            case FUNGICIDE -> FUNGICIDE;
        };
    }
}
