package plumbrow.advice.pestpage;

import org.jspecify.annotations.Nullable;

/** A line on when and how to look, with the figure that answers it where there is one. */
public record Scouting(String says, @Nullable String figure, String source) {}
