package plumbrow.advice.outlook;

import java.util.List;

/** How an uncertain quantity is spread, in the quantity's own unit. Checked when made. */
public sealed interface Law {

    /** A number without doubt. */
    record Fixed(double value) implements Law {}

    /** Lowest, most likely and highest value, with a smooth peak; low ≤ likely ≤ high and low < high. */
    record Pert(double low, double likely, double high) implements Law {}

    /** Lowest, most likely and highest value, with straight sides; low ≤ likely ≤ high and low < high. */
    record Triangular(double low, double likely, double high) implements Law {}

    /** Bell-shaped about a mean; cv is the standard deviation over the mean, more than 0. */
    record Normal(double mean, double cv) implements Law {}

    /** Yield-like: not negative, leaning left where the cv is small; mean and cv more than 0. */
    record Weibull(double mean, double cv) implements Law {}

    /** A price: mean {@code price} today, annual volatility, years until it is known; all 0 or more, price above 0. */
    record Lognormal(double price, double volatility, double years) implements Law {}

    /** Past values, each as likely as the next; at least two. */
    record Past(List<Double> values) implements Law {
        public Past {
            values = List.copyOf(values);
        }
    }

    /** Yes or no: 1 with this chance, else 0; chance 0 to 1. Only for what either works or fails. */
    record Chance(double chance) implements Law {}
}
