package plumbrow.documents.paper;

import java.util.regex.Pattern;

/**
 * A word as it was made out in a picture.
 *
 * @param line which line of the picture it stands in; words of one line follow each other
 * @param left, top, right, bottom in dots of the picture
 * @param confidence how sure the reading is, 0 to 100
 */
public record OpticalWord(int line, String text, int left, int top, int right, int bottom, double confidence) {
    private static final Pattern UNIT = Pattern.compile("(?i)(?:(?:cm|ft|in|m)[23³²]|[LEI][DC]50)\\W*$");

    /** Whether a number stands in it; the 3 of g/cm3 and the 50 of LD50 are none. */
    boolean holdsNumber() {
        return UNIT.matcher(text).replaceFirst("").chars().anyMatch(Character::isDigit);
    }

    /** Whether the middle of one lies in the other. */
    boolean overlaps(OpticalWord other) {
        int across = (left + right) / 2;
        int down = (top + bottom) / 2;
        return other.left <= across && across <= other.right && other.top <= down && down <= other.bottom;
    }

    /** The same place with other words. */
    OpticalWord saying(String other) {
        return new OpticalWord(line, other, left, top, right, bottom, confidence);
    }

    /** The same in a picture drawn larger or smaller by a factor. */
    OpticalWord scaled(double by) {
        return new OpticalWord(
                line,
                text,
                (int) Math.round(left * by),
                (int) Math.round(top * by),
                (int) Math.round(right * by),
                (int) Math.round(bottom * by),
                confidence);
    }
}
