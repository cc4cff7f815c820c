package plumbrow.science.reference;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as tests report it: definite, a range, or a limit that was not reached.
 *
 * {@code >2000} from a limit test says that no half was killed at 2000, not what would kill half: it is never averaged with
 * definite numbers.
 *
 * @param kind what the sign says
 * @param low lower end, 0 where there is none
 * @param high upper end, infinite where there is none; equal to low for a definite number
 * @param printed as it stands in the set
 */
public record Bound(Kind kind, double low, double high, String printed) implements Value {
    private static final String NUMBER = "(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+-]?\\d+)?";
    private static final Pattern SHAPE = Pattern.compile("(>=|<=|>|<)?(" + NUMBER + ")(?:-(" + NUMBER + "))?");

    /** What is known of the true value. */
    public enum Kind {
        DEFINITE,
        RANGE,
        ABOVE,
        AT_LEAST,
        BELOW,
        AT_MOST
    }

    public Bound {
        if (!(low >= 0 && low <= high)) {
            throw new IllegalArgumentException(
                    "From " + low + " to " + high + "; expected 0 or more, the low end first.");
        }
    }

    /** A number, a range {@code low-high}, or a number behind {@code >}, {@code >=}, {@code <}, {@code <=}. */
    public static Optional<Bound> read(String text) {
        Matcher parts = SHAPE.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        double first = Double.parseDouble(parts.group(2));
        if (parts.group(3) != null) {
            double second = Double.parseDouble(parts.group(3));
            return parts.group(1) == null && first < second && Double.isFinite(second)
                    ? Optional.of(new Bound(Kind.RANGE, first, second, text))
                    : Optional.empty();
        }
        return Double.isFinite(first) ? Optional.of(of(sign(parts), first, text)) : Optional.empty();
    }

    private static String sign(Matcher parts) {
        String sign = parts.group(1);
        return sign == null ? "" : sign;
    }

    private static Bound of(String sign, double number, String printed) {
        return switch (sign) {
            case ">" -> new Bound(Kind.ABOVE, number, Double.POSITIVE_INFINITY, printed);
            case ">=" -> new Bound(Kind.AT_LEAST, number, Double.POSITIVE_INFINITY, printed);
            case "<" -> new Bound(Kind.BELOW, 0, number, printed);
            case "<=" -> new Bound(Kind.AT_MOST, 0, number, printed);
            default -> new Bound(Kind.DEFINITE, number, number, printed);
        };
    }

    /** Whether it is one number. */
    public boolean definite() {
        return kind == Kind.DEFINITE;
    }

    /** Whether one end is open. */
    public boolean limit() {
        return kind != Kind.DEFINITE && kind != Kind.RANGE;
    }

    /** The number that is printed: of a range its low end, of a limit the limit. */
    public double number() {
        return kind == Kind.BELOW || kind == Kind.AT_MOST ? high : low;
    }

    /** The smallest value it can stand for. */
    public double least() {
        return kind == Kind.ABOVE || (low == 0 && kind == Kind.BELOW) ? Math.nextUp(low) : low;
    }

    /** The largest value it can stand for. */
    public double most() {
        return kind == Kind.BELOW ? Math.nextDown(high) : high;
    }

    /** The same in a unit of which one is worth {@code factor}. */
    public Bound times(double factor) {
        return new Bound(kind, low * factor, high * factor, printed);
    }
}
