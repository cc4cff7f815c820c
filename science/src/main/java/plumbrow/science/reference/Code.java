package plumbrow.science.reference;

import java.util.Optional;
import java.util.regex.Pattern;

/** A group of action: "5", "4A", "M03". */
public record Code(String printed) implements Value {
    private static final Pattern SHAPE = Pattern.compile("[A-Z]?\\d{1,2}[A-Z]?");

    public static Optional<Code> read(String text) {
        return SHAPE.matcher(text).matches() ? Optional.of(new Code(text)) : Optional.empty();
    }
}
