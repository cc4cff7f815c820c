package plumbrow.advice.weighing;

import java.math.BigDecimal;
import java.math.MathContext;
import plumbrow.science.figure.Numbers;

/** Values of uncertain inputs as a sentence says them: three digits, dollars in front, chances as odds. */
public final class Quantities {
    private Quantities() {}

    /** A value with its unit: "$4.20/bu", "45 %", "1.3 nodes", "7 of 10". */
    public static String text(double value, String unit) {
        if (unit.equals("chance")) {
            return Odds.words(value);
        }
        if (unit.startsWith("$")) {
            return Numbers.dollars(value, 2) + unit.substring(1);
        }
        if (unit.equals("share")) {
            return Numbers.fixed(value * 100, 0) + " %";
        }
        String number = Numbers.plain(
                value == 0 ? 0 : new BigDecimal(value).round(new MathContext(3)).doubleValue());
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** Dollars per acre, to the dollar where it is ten or more, else to ten cents: "$14/ac", "$4.20/ac". */
    public static String dollarsPerAcre(double value) {
        return Math.abs(value) >= 9.95
                ? Numbers.dollars(value, 0) + "/ac"
                : Numbers.dollars(Math.rint(value * 10) / 10, 2) + "/ac";
    }
}
