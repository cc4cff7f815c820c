package plumbrow.documents.workbook.form;

import java.math.BigDecimal;

/**
 * A number within limits.
 *
 * @param low lowest value allowed, or −∞
 * @param lowOpen whether {@code low} itself is excluded
 * @param high highest value allowed, or ∞
 */
public record NumberKind(double low, boolean lowOpen, double high) implements Kind<Double> {
    public static NumberKind any() {
        return new NumberKind(Double.NEGATIVE_INFINITY, true, Double.POSITIVE_INFINITY);
    }

    public static NumberKind atLeast(double low) {
        return new NumberKind(low, false, Double.POSITIVE_INFINITY);
    }

    public static NumberKind above(double low) {
        return new NumberKind(low, true, Double.POSITIVE_INFINITY);
    }

    public static NumberKind between(double low, double high) {
        return new NumberKind(low, false, high);
    }

    public NumberKind upTo(double limit) {
        return new NumberKind(low, lowOpen, limit);
    }

    public boolean holds(double value) {
        return (lowOpen ? value > low : value >= low) && value <= high;
    }

    @Override
    public String words() {
        String lower = low == Double.NEGATIVE_INFINITY ? "" : lowOpen ? "above " + plain(low) : plain(low) + " or more";
        if (high == Double.POSITIVE_INFINITY) {
            return lower.isEmpty() ? "a number" : "a number " + (lowOpen ? lower : "of " + lower);
        }
        return lowOpen
                ? "a number above " + plain(low) + " and up to " + plain(high)
                : "a number from " + plain(low) + " to " + plain(high);
    }

    @Override
    public Double read(Cell cell) throws Misread {
        double value = Numeric.read(cell, words());
        if (!holds(value)) {
            throw new Misread(words());
        }
        return value;
    }

    @Override
    public Cell show(Double value) {
        return Cell.Numeral.of(value);
    }

    @Override
    public Storage<Double> storage() {
        return Storage.NUMBER;
    }

    static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
