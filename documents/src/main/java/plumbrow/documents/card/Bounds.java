package plumbrow.documents.card;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import plumbrow.documents.sheet.Amount;
import plumbrow.science.reference.Bound;

/** Amounts of a sheet as the bounds that the figures know. */
final class Bounds {
    private Bounds() {}

    /**
     * What an amount leaves open, in the unit of a figure; empty where its unit can't be turned into that.
     *
     * @param worth what one of the amount's unit is worth
     */
    static Optional<Bound> of(Amount amount, Function<String, OptionalDouble> worth) {
        OptionalDouble factor = worth.apply(amount.unit());
        if (factor.isEmpty() || amount.low() <= 0) {
            return Optional.empty();
        }
        return Optional.of(of(amount).times(factor.getAsDouble()));
    }

    private static Bound of(Amount amount) {
        double low = amount.low();
        double infinite = Double.POSITIVE_INFINITY;
        return switch (amount.qualifier()) {
            case EXACTLY, ABOUT -> new Bound(Bound.Kind.DEFINITE, low, low, amount.words());
            case RANGE -> new Bound(Bound.Kind.RANGE, low, amount.high(), amount.words());
            case MORE_THAN -> new Bound(Bound.Kind.ABOVE, low, infinite, amount.words());
            case AT_LEAST -> new Bound(Bound.Kind.AT_LEAST, low, infinite, amount.words());
            case LESS_THAN -> new Bound(Bound.Kind.BELOW, 0, low, amount.words());
            case AT_MOST -> new Bound(Bound.Kind.AT_MOST, 0, low, amount.words());
        };
    }
}
