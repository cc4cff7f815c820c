package plumbrow.documents.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * A number with its unit, as printed.
 *
 * @param low, high both the number itself; the ends where it is a range
 * @param unit in one spelling for all sheets, such as mmHg, mg/kg, °C; empty for a bare number
 */
public record Amount(Qualifier qualifier, double low, double high, String unit, Conditions conditions) {
    private static final double SMALL = 1e-3;
    private static final double LARGE = 1e7;

    /** How the number is meant. */
    public enum Qualifier {
        EXACTLY(""),
        MORE_THAN("> "),
        AT_LEAST("≥ "),
        LESS_THAN("< "),
        AT_MOST("≤ "),
        ABOUT("about "),
        RANGE("");

        private final String sign;

        Qualifier(String sign) {
            this.sign = sign;
        }

        public String sign() {
            return sign;
        }
    }

    /**
     * Under what the number was found; null where not said.
     *
     * @param celsius temperature [°C]
     * @param hours exposure [h]
     * @param method such as "closed cup"; empty where not said
     */
    public record Conditions(
            @Nullable Double celsius, @Nullable Double hours, String method) {
        public static final Conditions NONE = new Conditions(null, null, "");

        String words() {
            return (celsius == null ? "" : " at " + plain(celsius) + " °C")
                    + (hours == null ? "" : ", " + plain(hours) + " h")
                    + (method.isEmpty() ? "" : ", " + method);
        }
    }

    public Amount {
        if (!(low <= high)) {
            throw new IllegalArgumentException(low + " to " + high + " is no range");
        }
    }

    public Amount under(Conditions other) {
        return new Amount(qualifier, low, high, unit, other);
    }

    public String words() {
        String number = qualifier == Qualifier.RANGE ? plain(low) + "–" + plain(high) : plain(low);
        return qualifier.sign() + number + (unit.isEmpty() ? "" : " " + unit) + conditions.words();
    }

    private static String plain(double value) {
        double size = Math.abs(value);
        if (size != 0 && (size < SMALL || size >= LARGE)) {
            return String.valueOf(
                    new BigDecimal(value).round(new MathContext(12)).doubleValue());
        }
        String text = new BigDecimal(value)
                .round(new MathContext(12))
                .stripTrailingZeros()
                .toPlainString();
        return text;
    }
}
