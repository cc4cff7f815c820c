package plumbrow.science.reference;

import java.util.Optional;
import plumbrow.science.figure.Status;

/**
 * How well a value is backed, and with which reserve.
 *
 * @param reserve what was not seen although the value was, such as the key of a letter; empty where there is none
 */
public record Backing(Status status, String reserve) {
    static final String WORDS = "verified, computed, practice or memory, with a reserve behind a semicolon if need be";

    /** Reads "verified", "memory", "verified; converted from …", "verified letter; per cent band assumed". */
    static Optional<Backing> read(String text) {
        int end = text.indexOf(';');
        String head = end < 0 ? text : text.substring(0, end);
        String tail = end < 0 ? "" : text.substring(end + 1).strip();
        return switch (head.strip()) {
            case "verified" -> Optional.of(new Backing(Status.VERIFIED, tail));
            case "verified rating", "verified letter" ->
                tail.isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                                new Backing(Status.VERIFIED, head.substring("verified ".length()) + " seen, " + tail));
            case "computed" -> Optional.of(new Backing(Status.COMPUTED, tail));
            case "practice" -> Optional.of(new Backing(Status.PRACTICE, tail));
            case "memory" -> Optional.of(new Backing(Status.MEMORY, tail));
            default -> Optional.empty();
        };
    }

    /** Whether the value was seen in its source, without reserve. */
    public boolean sure() {
        return status == Status.VERIFIED && reserve.isEmpty();
    }

    /** A mark that survives grey print and stands beside the words: filled, half filled, empty. */
    public String mark() {
        return sure() ? "●" : status == Status.VERIFIED ? "◐" : "○";
    }

    /** "verified", "value from memory", "verified: letter seen, per cent band assumed". */
    public String words() {
        return reserve.isEmpty() ? status.words() : status.words() + ": " + reserve;
    }
}
