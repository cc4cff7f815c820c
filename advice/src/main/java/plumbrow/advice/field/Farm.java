package plumbrow.advice.field;

/**
 * A farm of the book.
 *
 * @param name unique in the book
 * @param grower who farms it
 * @param cropShare the operator's share of the crop, more than 0 up to 1 (1 on owned or cash-rented land)
 * @param costShare the operator's share of input costs, 0 to 1
 */
public record Farm(String name, String grower, double cropShare, double costShare) {}
