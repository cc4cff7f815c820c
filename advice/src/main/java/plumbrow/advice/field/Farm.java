package plumbrow.advice.field;

import java.util.Objects;

/**
 * A farm of the book.
 *
 * @param name unique in the book
 * @param grower who farms it
 * @param cropShare the operator's share of the crop, more than 0 up to 1 (1 on owned or cash-rented land)
 * @param costShare the operator's share of input costs that the lease does not part by kind, 0 to 1
 * @param shares his shares of the costs that it does
 */
public record Farm(String name, String grower, double cropShare, double costShare, CostShares shares) {

    /** A farm whose lease parts no cost by kind. */
    public Farm(String name, String grower, double cropShare, double costShare) {
        this(name, grower, cropShare, costShare, CostShares.NONE);
    }

    /** The operator's share of drying [0 to 1]: that of the crop unless the lease says another. */
    public double dryingShare() {
        return Objects.requireNonNullElse(shares.drying(), cropShare);
    }

    /** The operator's share of hauling [0 to 1]: all of it unless the lease says another. */
    public double haulingShare() {
        return Objects.requireNonNullElse(shares.hauling(), 1.0);
    }
}
