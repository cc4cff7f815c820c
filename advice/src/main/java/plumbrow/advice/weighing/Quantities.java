package plumbrow.advice.weighing;

import java.math.BigDecimal;
import java.math.MathContext;
import plumbrow.science.figure.Numbers;

/** Values of uncertain inputs as a sentence says them: three digits, dollars in front, chances as odds. */
public final class Quantities {
    private Quantities() {}

    /** A value with its unit: "$4.20/bu", "45 %", "1.3 nodes", "74 of 100". */
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

    /** Dollars per acre, as {@link #drawnDollars}: "$14/ac", "$4.20/ac". */
    public static String dollarsPerAcre(double value) {
        return drawnDollars(value) + "/ac";
    }

    /** A gain in dollars with its sign, as {@link #drawnDollars}: "+$12", "−$3.40", "$0". */
    public static String gain(double value) {
        String text = drawnDollars(value);
        return text.equals("$0") || text.startsWith("−") ? text : "+" + text;
    }

    /** Dollars that come out of draws: to the dollar from ten on, else to ten cents: "$14", "$4.20", "$0". */
    public static String drawnDollars(double value) {
        double tenths = Math.rint(value * 10) / 10;
        return tenths == 0 || Math.abs(tenths) >= 10 ? Numbers.dollars(value, 0) : Numbers.dollars(tenths, 2);
    }
}
