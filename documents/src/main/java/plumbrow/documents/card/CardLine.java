package plumbrow.documents.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Answer;

/**
 * One thing the card says.
 *
 * @param about what of, such as "hands" or "chlorpyrifos, reportable quantity"
 * @param says the value in words; of an unknown one "look up: …" and where
 * @param origins where it comes from; empty for what is unknown
 * @param working the figure that worked it out; null where nothing was worked
 */
public record CardLine(
        String about,
        String says,
        Known known,
        List<Origin> origins,
        @Nullable Answer working) {
    public CardLine {
        origins = List.copyOf(origins);
    }

    CardLine(String about, String says, Known known, List<Origin> origins) {
        this(about, says, known, origins, null);
    }

    static CardLine unknown(String about, String lookUp) {
        return new CardLine(about, "unknown; look up: " + lookUp, Known.UNKNOWN, List.of());
    }
}
