package plumbrow.advice.assumptions;

import java.util.List;

/** Numbers that a test holds without any spread: a past value that was the same twice, to which none is added. */
public final class Sure {
    private Sure() {}

    public static Distribution of(double value) {
        return new Distribution.Past(List.of(value, value));
    }

    /** A distribution as it is; one number without spread. */
    public static Distribution of(Distribution distribution) {
        return distribution instanceof Distribution.Fixed fixed ? of(fixed.value()) : distribution;
    }
}
