package plumbrow.advice.loadcard;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.tank.MixCare;
import plumbrow.science.figure.Numbers;
import plumbrow.science.spraying.MeasuredAmount;

/** Rounds amounts to what can be measured, never out of the label's range, and tells them in containers. */
final class Measures {
    private static final Amount LIQUID_MARK = new Amount(1, FarmUnit.FL_OZ);
    private static final Amount DRY_MARK = new Amount(0.1, FarmUnit.LB);
    private static final Amount SMALL_DRY_MARK = new Amount(0.1, FarmUnit.OZ);
    private static final double FINER = 10;

    private Measures() {}

    /**
     * An amount for one load.
     *
     * @param rate in its own unit, {@code least} and {@code most} of the label in the same; 0 and infinite where it sets none
     * @return null where even a tenth of the mark can't show it within the label
     */
    static LoadCard.@Nullable Measured of(
            Amount exact, double rate, double least, double most, @Nullable MixCare care) {
        if (exact.value() <= 0) {
            return null;
        }
        Amount mark = mark(exact, care);
        double amount = exact.in(mark.unit()).value();
        for (double size : new double[] {mark.value(), mark.value() / FINER, mark.value() / FINER / FINER}) {
            double marks = MeasuredAmount.marks(amount, size, rate, least, most);
            if (marks > 0) {
                double measured = marks * size;
                Amount whole = new Amount(measured, mark.unit());
                return new LoadCard.Measured(
                        amount,
                        measured,
                        mark.unit().symbol(),
                        words(whole, size, care),
                        100 * (measured / amount - 1),
                        rate * measured / amount,
                        mark.unit().dimension() == Dimension.VOLUME ? whole.inBase() : 0);
            }
        }
        return null;
    }

    private static Amount mark(Amount exact, @Nullable MixCare care) {
        Amount own = care == null ? null : care.mark();
        if (own != null && own.comparableWith(exact)) {
            return own;
        }
        if (exact.unit().dimension() == Dimension.VOLUME) {
            return LIQUID_MARK;
        }
        return exact.inBase() < 1 ? SMALL_DRY_MARK : DRY_MARK;
    }

    /** "6 × 2.5 gal + 213 fl oz"; without a container on file in gallons or pounds and what is left of them. */
    private static String words(Amount amount, double mark, @Nullable MixCare care) {
        Amount container = care == null ? null : care.container();
        FarmUnit big = amount.unit().dimension() == Dimension.VOLUME ? FarmUnit.GAL : FarmUnit.LB;
        boolean packed = container != null && container.comparableWith(amount);
        Amount whole = packed && container != null ? container : new Amount(1, big);
        if (whole.unit() == amount.unit() && whole.value() <= mark) {
            return text(amount.value()) + " " + amount.unit().symbol();
        }
        double per = whole.in(amount.unit()).value();
        double full = Math.floor(amount.value() / per + 1e-9);
        double rest = Math.max(0, amount.value() - full * per);
        rest = Math.rint(rest / mark) * mark;
        String first = packed
                ? Numbers.fixed(full, 0) + " × " + text(whole.value()) + " "
                        + whole.unit().symbol()
                : Numbers.fixed(full, 0) + " " + big.symbol();
        String last = text(rest) + " " + amount.unit().symbol();
        return full == 0 ? last : rest == 0 ? first : first + " + " + last;
    }

    private static String text(double value) {
        return Numbers.plain(Math.rint(value * 1000) / 1000);
    }

    /** A total, told in a unit a person buys by. */
    static String total(Amount amount) {
        FarmUnit big = amount.unit().dimension() == Dimension.VOLUME ? FarmUnit.GAL : FarmUnit.LB;
        return Numbers.read(amount.in(big).value(), big.symbol());
    }
}
