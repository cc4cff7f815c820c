package plumbrow.advice.gates;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Control;

/**
 * How well a product controls a pest at a rate, as the book has it.
 *
 * @param share mean share removed [0 to 1]
 */
public record Kill(String product, String pest, Amount rate, double share, String source) {
    /** Control from which on a product counts as effective: 80 %, common practice, no source. */
    public static final double EFFECTIVE = 0.8;

    static Kill of(Control control) {
        return new Kill(
                control.product(),
                control.pest(),
                control.rate(),
                Chances.of(control.share()).mean(),
                control.source());
    }

    boolean effective() {
        return share >= EFFECTIVE - 1e-9;
    }

    /** The row that holds at a rate: that of the highest rate not above it. */
    static Optional<Kill> at(@Nullable Amount rate, List<Kill> rows) {
        return rate == null
                ? Optional.empty()
                : rows.stream()
                        .filter(row -> row.rate().comparableWith(rate))
                        .filter(row -> !Rounding.above(row.rate().inBase(), rate.inBase()))
                        .max(Comparator.comparingDouble(row -> row.rate().inBase()));
    }
}
