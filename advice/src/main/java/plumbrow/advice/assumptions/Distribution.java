package plumbrow.advice.assumptions;

import java.util.List;

/** How an uncertain quantity is spread, in the quantity's own unit. Checked when made. */
public sealed interface Distribution {
    /** The standard normal value that one in ten lies above. */
    double EIGHT_OF_TEN = 1.2815515655446004;

    /** A number without doubt. */
    record Fixed(double value) implements Distribution {}

    /** Lowest, most likely and highest value, with a smooth peak; low ≤ likely ≤ high and low < high. */
    record Pert(double low, double likely, double high) implements Distribution {}

    /** Lowest, most likely and highest value, with straight sides; low ≤ likely ≤ high and low < high. */
    record Triangular(double low, double likely, double high) implements Distribution {}

    /** Every value between two as likely as the next; low < high. */
    record Even(double low, double high) implements Distribution {}

    /** Bell-shaped about a mean; cv is the standard deviation over the mean, more than 0. */
    record Normal(double mean, double cv) implements Distribution {}

    /** Yield-like: not negative, leaning left where the cv is small; mean and cv more than 0. */
    record Weibull(double mean, double cv) implements Distribution {}

    /** A price: mean {@code price} today, annual volatility, years until it is known; all 0 or more, price above 0. */
    record Lognormal(double price, double volatility, double years) implements Distribution {}

    /** Only drawn, never entered in a season. A positive number that differs by a factor, such as from field to field: median above 0, SD of its logarithm above 0. */
    record Factor(double median, double logSd) implements Distribution {
        /** Times less or more within which eight of ten cases lie. */
        public double timesOfEight() {
            return Math.exp(EIGHT_OF_TEN * logSd);
        }
    }

    /** Only drawn, never entered in a season. A share that differs from trial to trial: median above 0 and below 1, SD of its log-odds above 0. */
    record LogOdds(double median, double logitSd) implements Distribution {
        /** One in ten lies below. */
        public double lowOfEight() {
            return at(-EIGHT_OF_TEN);
        }

        /** One in ten lies above. */
        public double highOfEight() {
            return at(EIGHT_OF_TEN);
        }

        private double at(double z) {
            return 1 / (1 + (1 - median) / median * Math.exp(-logitSd * z));
        }
    }

    /** Past values, each as likely as the next; at least two. */
    record Past(List<Double> values) implements Distribution {
        public Past {
            values = List.copyOf(values);
        }
    }

    /** Yes or no: 1 with this chance, else 0; chance 0 to 1. Only for what either works or fails. */
    record Chance(double chance) implements Distribution {}
}
