package plumbrow.advice.outlook;

import java.util.List;

/** Numbers that a test holds without any spread: a past value that was the same twice, to which none is added. */
public final class Sure {
    private Sure() {}

    public static Law of(double value) {
        return new Law.Past(List.of(value, value));
    }

    /** A law as it is; one number without spread. */
    public static Law of(Law law) {
        return law instanceof Law.Fixed fixed ? of(fixed.value()) : law;
    }
}
