package plumbrow.science.reference;

import java.util.OptionalDouble;
import plumbrow.science.figure.Numbers;

/**
 * One figure to begin with where nobody has entered the farm's own: wide, and never the farm's.
 *
 * @param crop the crop, "winter wheat" and "spring wheat" apart where a source parts them, or "all"
 * @param state two-letter postal code, or "all"
 * @param quantity what it is a figure of
 * @param low one in ten lies below, or the lowest seen where the conditions say so; absent where nobody says
 * @param likely the middle
 * @param high one in ten lies above
 * @param year the year or years it is of; empty where it has none
 * @param conditions what it holds for
 */
public record TypicalValue(
        String crop,
        String state,
        String quantity,
        OptionalDouble low,
        double likely,
        OptionalDouble high,
        String unit,
        String year,
        String conditions,
        Origin origin,
        Backing backing,
        int row)
        implements Entry {
    /** The words by which a value of this table is known wherever it stands. */
    public static final String MARK = "typical, not yours";

    /** Whether a source of a value in a season says that it came from this table. */
    public static boolean marked(String source) {
        return source.startsWith(MARK);
    }

    @Override
    public String about() {
        return String.join(" ", crop, state, quantity, unit, year, conditions);
    }

    @Override
    public String says() {
        return (low.isPresent() ? Numbers.plain(low.getAsDouble()) + ", " : "")
                + Numbers.plain(likely)
                + (high.isPresent() ? ", " + Numbers.plain(high.getAsDouble()) : "");
    }

    /** "typical, not yours: IA, 2017-2021; NASS …; computed". */
    public String words() {
        String place = state.equals("all") ? "all states" : state;
        return MARK + ": " + place + (year.isEmpty() ? "" : ", " + year) + "; " + origin.source()
                + (origin.source().contains(backing.status().words()) ? "" : " (" + backing.words() + ")");
    }
}
