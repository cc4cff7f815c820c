package plumbrow.app.desk.shown;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.weighing.Band;
import plumbrow.advice.weighing.Quantities;
import plumbrow.science.figure.Numbers;

/** Values as the pages write them. */
public final class Shown {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.US);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("MMMM d, yyyy, HH:mm", Locale.US);

    private Shown() {}

    /** Whole dollars: "$1,240", "−$3". */
    public static String dollars(double value) {
        return Numbers.dollars(value, 0);
    }

    /** Dollars and cents, for what is priced and not drawn. */
    public static String cents(double value) {
        return Numbers.dollars(value, 2);
    }

    /** A gain per acre with its sign, to the dollar from ten on, else to ten cents: "+$12", "−$3.40", "$0". */
    public static String gain(double value) {
        return Quantities.gain(value);
    }

    /** A band of dollars: "−$4 to $31". */
    public static String band(Band band) {
        return dollars(band.low()) + " to " + dollars(band.high());
    }

    /** A band of gains: "−$4 to +$31". */
    public static String gains(Band band) {
        return gain(band.low()) + " to " + gain(band.high());
    }

    public static String acres(double acres) {
        return Numbers.fixed(acres, acres < 100 && acres != Math.rint(acres) ? 1 : 0);
    }

    /** At most four significant digits, never an exponent. */
    public static String number(double value) {
        return Numbers.read(value);
    }

    /** The same with its unit, in the singular for one of them. */
    public static String number(double value, String unit) {
        return Numbers.read(value, unit);
    }

    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** A moment in the time of this machine: "April 3, 2027, 06:12". */
    public static String moment(Instant at) {
        return MOMENT.format(at.atZone(ZoneId.systemDefault()));
    }

    /** Rounded to tenths, where more digits would say more than the draws do. */
    public static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }

    /** A count with its noun: "1 field", "12 fields". */
    public static String count(int number, String noun) {
        return count(number, noun, noun + "s");
    }

    /** A count with the words for one and for more: "1 box", "2 boxes". */
    public static String count(int number, String one, String more) {
        return Numbers.fixed(number, 0) + " " + (number == 1 ? one : more);
    }

    /** A name as one part of an address. */
    public static String part(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** A name as an id within a page. */
    public static String id(String name) {
        return part(name).replace('%', '-').replace('*', '-');
    }

    /** A sentence whose minus signs are kept on the line of their dollars. */
    public static String said(String sentence) {
        return sentence.replace("−$", "−\u2060$");
    }

    /** The sentence with a capital first letter. */
    public static String capital(String sentence) {
        return sentence.isEmpty() ? sentence : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    /** The text, or nothing where there is none. */
    public static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    /** A text of the manual without the signs that set words of the workbook apart. */
    public static String bare(String text) {
        return text.replace("`", "");
    }
}
