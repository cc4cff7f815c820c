package plumbrow.app.book;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The last link of a book's chain at a moment: kept elsewhere, on paper or in a backup, it shows later whether the record up to
 * there is still the same.
 *
 * @param number of the link, 0 for the beginning
 * @param hash in small hexadecimal digits: 64, or the first 16 or more where it was shortened
 */
public record RecordHead(int number, String hash) {
    /** As printed: enough that nobody finds another record with the same digits (128 bits). */
    private static final int PRINTED = 32;

    private static final Pattern TEXT = Pattern.compile("(\\d{1,9}):([0-9a-f]{16,64})");

    /** As it is printed: {@code 42:3f9c…}, the number and the first 32 digits. */
    public String text() {
        return number + ":" + hash.substring(0, Math.min(PRINTED, hash.length()));
    }

    /** Reads what was printed; blanks and capitals do not count. */
    public static Optional<RecordHead> read(String text) {
        Matcher parts = TEXT.matcher(text.replaceAll("\\s+", "").toLowerCase(Locale.ROOT));
        return parts.matches()
                ? Optional.of(new RecordHead(Integer.parseInt(parts.group(1)), parts.group(2)))
                : Optional.empty();
    }
}
