package plumbrow.app.desk.weighing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Numbers as people type them into boxes: "4.20", "$4.20", "1,200", "−3", "15 %". */
final class BoxText {
    /** Nobody types a share with more digits than this. */
    private static final int MOST_TYPED = 8;

    private static final MathContext WORKED_OUT = new MathContext(3);
    private static final Pattern NUMBER = Pattern.compile("-?(\\d{1,3}(,\\d{3})+|\\d+)?(\\.\\d*)?([eE][+-]?\\d{1,2})?");

    private BoxText() {}

    /** The number typed; empty where it is none. */
    static OptionalDouble number(String typed) {
        String text = typed.strip()
                .replace('−', '-')
                .replaceFirst("^(-?)\\$\\s*", "$1")
                .replaceFirst("\\s*%$", "");
        if (!text.matches(".*\\d.*") || !NUMBER.matcher(text).matches()) {
            return OptionalDouble.empty();
        }
        double value;
        try {
            value = Double.parseDouble(text.replace(",", ""));
        } catch (NumberFormatException notANumber) {
            return OptionalDouble.empty();
        }
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** A number as it stands in a box: all its digits, nothing between them. */
    static String of(double value) {
        return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** A share as per cent, without the noise of binary fractions; one that was worked out and not typed with three digits. */
    static String percent(double share) {
        BigDecimal percent = BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros();
        return share == 0
                ? "0"
                : (percent.precision() > MOST_TYPED ? percent.round(WORKED_OUT) : percent).toPlainString();
    }
}
