package plumbrow.documents.card;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * EPA registration numbers: company, product, and for a product sold under another's name the distributor.
 *
 * Source: 40 CFR 156.10(e) (shape from memory).
 */
public final class RegistrationNumber {
    private static final Pattern SHAPE =
            Pattern.compile("(?<!\\d)(\\d{1,6})\\s?[-–‐‑]\\s?(\\d{1,5})(?:\\s?[-–‐‑]\\s?(\\d{1,6}))?(?![\\d-])");

    private RegistrationNumber() {}

    /** The number in one spelling, "90017-12" or "90017-12-90001"; the text itself where it holds none. */
    public static String plain(String text) {
        Matcher number = SHAPE.matcher(text);
        if (!number.find()) {
            return text.strip();
        }
        return number.group(1) + "-" + number.group(2) + (number.group(3) == null ? "" : "-" + number.group(3));
    }

    /** Whether both name the same product and distributor. */
    public static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }
}
