package plumbrow.advice.program;

import org.jspecify.annotations.Nullable;

/**
 * Which planned pass a line of the log was, as a person said.
 *
 * @param program of the field of the line; null where it was none of the planned passes
 * @param pass its number in the program; 0 where it was none
 */
public record MeantPass(@Nullable String program, int pass) {
    public static final MeantPass NONE = new MeantPass(null, 0);

    /** Whether the person said that it was none of the planned passes. */
    public boolean none() {
        return program == null;
    }

    /** "pass 3 of Before and after", "none of the planned passes". */
    public String words() {
        return none() ? "none of the planned passes" : "pass " + pass + " of " + program;
    }
}
