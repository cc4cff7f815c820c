package plumbrow.advice.quantity;

import plumbrow.science.figure.Numbers;

/**
 * An amount as it was written, such as 12 fl oz. Rates are amounts per acre; prices are dollars per unit sold.
 *
 * @param value the number written, finite and not negative
 * @param unit the unit written
 */
public record Amount(double value, FarmUnit unit) {
    /** 1 ha = 2.471 053 8 ac (international acre 4,046.856 422 4 m²). */
    public static final double ACRES_PER_HECTARE = 10_000 / 4_046.856_422_4;

    public Amount {
        if (!Double.isFinite(value) || value < 0) {
            throw new IllegalArgumentException("an amount is zero or more, not " + value);
        }
    }

    /** The amount in the base unit of its dimension: gallons, pounds, seeds, units or bushels. */
    public double inBase() {
        return value * unit.inBase();
    }

    /** The same amount in another unit. */
    public Amount in(FarmUnit other) {
        if (other.dimension() != unit.dimension()) {
            throw new IllegalArgumentException(
                    unit.symbol() + " is " + unit.dimension().words() + ", " + other.symbol() + " is "
                            + other.dimension().words());
        }
        return other == unit ? this : new Amount(inBase() / other.inBase(), other);
    }

    /** Whether both amounts measure the same kind of thing. */
    public boolean comparableWith(Amount other) {
        return unit.dimension() == other.unit.dimension();
    }

    /** The amount as a person reads it: "12 fl oz". */
    public String text() {
        return Numbers.plain(value) + " " + unit.symbol();
    }
}
