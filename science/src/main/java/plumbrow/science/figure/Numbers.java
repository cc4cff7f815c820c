package plumbrow.science.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as the desk writes them: thousands separated, a true minus sign, no more digits than asked. */
public final class Numbers {
    private static final int MOST_TERMS = 12;
    private static final Pattern POWER = Pattern.compile("(?<digits>\\d+(?:\\.\\d+)?)[eE](?<exponent>[+-]?\\d{1,3})");
    /** Applications, sites of action, seasons in a row, classes. */
    private static final Pattern COUNTED =
            Pattern.compile("(?:(?<hissing>[a-z]+ss)es|(?<thing>[a-z]{2,}[a-rt-z])s)(?<more>(?: (?:of|in) .*)?)");

    private Numbers() {}

    /** At most six significant digits, trailing zeros dropped: for workings. */
    public static String plain(double value) {
        if (!Double.isFinite(value)) {
            return "no number";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(6, RoundingMode.HALF_EVEN));
        double size = Math.abs(value);
        if (size < 1e-4 || size >= 1e12) {
            return signed(rounded.stripTrailingZeros().toString());
        }
        DecimalFormat format = new DecimalFormat("#,##0.##########", DecimalFormatSymbols.getInstance(Locale.ROOT));
        return signed(format.format(rounded));
    }

    /**
     * As a person reads it outside a working: at most four significant digits, whole numbers from a thousand on, never an
     * exponent; what is smaller than a ten-thousandth is said to be so.
     */
    public static String read(double value) {
        double size = Math.abs(value);
        if (!Double.isFinite(value) || value == 0) {
            return plain(value);
        }
        if (size < 1e-4) {
            return "less than 0.0001";
        }
        if (size >= 1000) {
            return fixed(value, 0);
        }
        return plain(new BigDecimal(value)
                .round(new MathContext(4, RoundingMode.HALF_EVEN))
                .doubleValue());
    }

    /**
     * A number as a source prints it, "1.31e-2", without the exponent: as a decimal where few noughts follow the point, else
     * as a power of ten. Anything else stays as it is.
     */
    public static String printed(String value) {
        Matcher power = POWER.matcher(value);
        if (!power.matches()) {
            return value;
        }
        int exponent = Integer.parseInt(power.group("exponent"));
        return exponent >= -4 && exponent < 6
                ? new BigDecimal(value).toPlainString()
                : power.group("digits") + " × 10" + raised(exponent);
    }

    private static String raised(int exponent) {
        StringBuilder text = new StringBuilder(exponent < 0 ? "⁻" : "");
        String.valueOf(Math.abs(exponent)).chars().forEach(digit -> text.append("⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(digit - '0')));
        return text.toString();
    }

    /** The same with its unit, one of them in the singular: "1 application", "2 applications", "0.24 lb ai/ac". */
    public static String read(double value, String unit) {
        String number = read(value);
        return (number + " " + (number.equals("1") ? one(unit) : unit)).strip();
    }

    /** The singular of a unit that is a counted thing; abbreviations and units with a sign stay. */
    private static String one(String unit) {
        Matcher counted = COUNTED.matcher(unit);
        if (!counted.matches()) {
            return unit;
        }
        String thing = counted.group("hissing");
        return (thing == null ? counted.group("thing") : thing) + counted.group("more");
    }

    /** A fixed number of decimals: for tables. */
    public static String fixed(double value, int decimals) {
        String pattern = decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
        DecimalFormat format = new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT));
        format.setRoundingMode(RoundingMode.HALF_EVEN);
        String text = format.format(value);
        return signed(text.matches("-0(\\.0*)?") ? text.substring(1) : text);
    }

    /** Dollars and cents with the sign in front: −$3.20. */
    public static String dollars(double value, int decimals) {
        String text = fixed(value, decimals);
        return text.startsWith("−") ? "−$" + text.substring(1) : "$" + text;
    }

    /** Numbers as the terms of a sum, negative ones in brackets; a long list is shortened in the middle. */
    public static String terms(double... values) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < values.length; i++) {
            if (values.length > MOST_TERMS && i == MOST_TERMS - 1) {
                text.append(" + …");
                i = values.length - 1;
            }
            text.append(i == 0 ? "" : " + ").append(inBrackets(values[i]));
        }
        return text.toString();
    }

    /** A number as it stands inside an arithmetic: a negative one in brackets. */
    public static String inBrackets(double value) {
        return value < 0 ? "(" + plain(value) + ")" : plain(value);
    }

    /** The next whole number: of bags, rows or units, where 68.00000000000001 is 68. */
    public static double wholeUp(double exact) {
        return Math.ceil(exact - 1e-9 * Math.max(Math.abs(exact), 1));
    }

    private static String signed(String text) {
        return text.startsWith("-") ? "−" + text.substring(1) : text;
    }
}
