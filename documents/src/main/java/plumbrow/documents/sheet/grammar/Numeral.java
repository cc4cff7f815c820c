package plumbrow.documents.sheet.grammar;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as printed.
 *
 * @param value what it is, or would be if the last sign before three digits were a decimal one
 * @param sure false where 5.000 or 5,000 may be five or five thousand
 */
record Numeral(double value, boolean sure) {
    /** Digits with marks of thousands or decimals. */
    static final String DIGITS = "(?:\\d{1,3}(?:[ \\u00a0\\u2009\\u202f]\\d{3})+(?![\\d])(?:[.,]\\d{1,6})?"
            + "|\\d{1,3}(?:,\\d{3})+(?!\\d)(?:\\.\\d{1,6})?|\\d{1,3}(?:\\.\\d{3}){2,}(?!\\d)(?:,\\d{1,6})?"
            + "|\\d{1,12}(?:[.,]\\d{1,12})?|[.,]\\d{1,12}|\\d{1,12}\\.(?=\\s\\p{L}))";

    /** Powers of ten: 2.9E-07, 2.9 x 10-7, 2.9 × 10⁻⁷, 2.9*10^-7, 2.9 x 10(-7), 2.9 X 10 -7. */
    static final String POWER = "(?:\\s?[eE]\\s?[-−–+]?\\s?\\d{1,2}(?!\\d)"
            + "|\\s?[x×X*·∙]\\s?10\\s?(?:\\^|\\*\\*)?\\s?\\(?\\s?(?:[-−–‐]\\s?\\d{1,2}(?!\\d)|\\+?\\d{1,2}(?!\\d)"
            + "|[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]{1,2})\\)?)";

    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final Pattern ONE_MARK = Pattern.compile("(\\d{1,3})([.,])(\\d{3})");
    private static final Pattern LAST_POWER = Pattern.compile("([-−–‐⁻]?)\\s?([\\d⁰¹²³⁴⁵⁶⁷⁸⁹]{1,2})\\)?$");

    /** @param strict whether three digits after a point may be thousands even where decimals have points, as in doses */
    static Numeral of(String digits, String power, NumberStyle style, boolean strict) {
        Numeral plain = plain(digits.strip(), style, strict && power.isEmpty());
        return power.isEmpty() ? plain : new Numeral(plain.value * Math.pow(10, exponent(power)), plain.sure);
    }

    private static Numeral plain(String digits, NumberStyle style, boolean strict) {
        String text = digits.replaceAll("[ \\u00a0\\u2009\\u202f]", "");
        boolean blanks = text.length() < digits.length();
        Matcher one = ONE_MARK.matcher(text);
        if (!blanks && one.matches() && !one.group(1).startsWith("0")) {
            return oneMark(one, style, strict);
        }
        int comma = text.lastIndexOf(',');
        int point = text.lastIndexOf('.');
        if (comma >= 0 && point >= 0) {
            text = comma > point ? text.replace(".", "").replace(',', '.') : text.replace(",", "");
        } else if (text.indexOf(',') != comma) {
            text = text.replace(",", "");
        } else if (text.indexOf('.') != point) {
            text = text.replace(".", "");
        } else {
            text = text.replace(',', '.');
        }
        return new Numeral(Double.parseDouble(text), true);
    }

    private static Numeral oneMark(Matcher one, NumberStyle style, boolean strict) {
        boolean comma = one.group(2).equals(",");
        double thousands = Double.parseDouble(one.group(1) + one.group(3));
        double decimal = Double.parseDouble(one.group(1) + "." + one.group(3));
        if (comma) {
            return style == NumberStyle.POINT || style == NumberStyle.SILENT
                    ? new Numeral(thousands, true)
                    : new Numeral(decimal, !strict && style == NumberStyle.COMMA);
        }
        return new Numeral(decimal, !strict && style == NumberStyle.POINT);
    }

    private static int exponent(String power) {
        Matcher last = LAST_POWER.matcher(power.strip());
        if (!last.find()) {
            return 0;
        }
        StringBuilder digits = new StringBuilder();
        for (char digit : last.group(2).toCharArray()) {
            int raised = RAISED.indexOf(digit);
            digits.append(raised >= 0 ? (char) ('0' + raised) : digit);
        }
        int size = Integer.parseInt(digits.toString());
        return last.group(1).isEmpty() ? size : -size;
    }
}
