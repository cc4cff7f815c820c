package plumbrow.documents.sheet.made;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** How a house writes numbers. */
enum Digits {
    POINT(",", "."),
    PLAIN("", "."),
    COMMA_AND_BLANK("\u00a0", ","),
    COMMA_AND_DOT(".", ",");

    /** How a house writes powers of ten. */
    enum Power {
        RAISED,
        LOST,
        LETTER,
        CARET,
        BLANK,
        NONE
    }

    private final String thousands;
    private final String decimal;

    Digits(String thousands, String decimal) {
        this.thousands = thousands;
        this.decimal = decimal;
    }

    String of(double value) {
        String plain = new BigDecimal(value)
                .round(new MathContext(7))
                .stripTrailingZeros()
                .toPlainString();
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        String rest = point < 0 ? "" : decimal + plain.substring(point + 1);
        StringBuilder grouped = new StringBuilder();
        for (int i = 0; i < whole.length(); i++) {
            int left = whole.length() - i;
            boolean mark = i > 0 && left % 3 == 0 && whole.charAt(i - 1) != '-' && whole.length() > 3;
            grouped.append(mark ? thousands : "").append(whole.charAt(i));
        }
        return grouped + rest;
    }

    /** Whether a dose so written may be read two ways: one dot before three digits. */
    boolean doubtful(double value) {
        return this == COMMA_AND_DOT && value >= 1000 && value < 1e6 && value == Math.rint(value);
    }

    String power(double mantissa, int exponent, Power power) {
        String front = of(mantissa);
        return switch (power) {
            case RAISED -> front + " x 10^{" + exponent + "}";
            case LOST -> front + " x 10" + exponent;
            case LETTER ->
                front + "E" + (exponent < 0 ? "-" : "+") + String.format(Locale.ROOT, "%02d", Math.abs(exponent));
            case CARET -> front + "*10^" + exponent;
            case BLANK -> front + " × 10 " + exponent;
            case NONE -> of(mantissa * Math.pow(10, exponent));
        };
    }
}
